import { readFileSync } from 'node:fs';

// Prints what the shipped program is made of: every package whose code is built into it (dist/NOTICES.txt), by licence,
// from the lock file and the packages' own manifests. Ends with 1 where a licence is missing or one asks for more than a
// notice, or where npm would install something beside the program.
const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
/** Those that ask for no more than their notice. */
const free = new Set([
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'Unlicense',
]);
const isFree = (licence) =>
  licence
    .replaceAll(/[()]/g, '')
    .split(/ (?:OR|AND) /)
    .every((one) => free.has(one));

const manifestOf = (path) => {
  try {
    return JSON.parse(readFileSync(`${path}/package.json`, 'utf8'));
  } catch {
    return {};
  }
};

const licenceOf = (path, entry) => {
  const { license, licenses } = manifestOf(path);
  const said = entry.license ?? license ?? licenses?.[0];
  return typeof said === 'object' ? (said?.type ?? 'unknown') : (said ?? 'unknown');
};

const nameAt = (path) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

const built = new Set(
  [...readFileSync('dist/NOTICES.txt', 'utf8').matchAll(/^(\S+ \d\S*) \(.*\)$/gm)].map(([, name]) => name),
);

const all = Object.entries(packages)
  .filter(([path]) => path.startsWith('node_modules/'))
  .map(([path, entry]) => ({
    name: nameAt(path),
    version: entry.version,
    licence: licenceOf(path, entry),
    shipped: built.has(`${nameAt(path)} ${entry.version}`),
    installed: entry.dev !== true && entry.devOptional !== true,
    scripts: entry.hasInstallScript === true,
    pinned: typeof entry.integrity === 'string' && entry.integrity.startsWith('sha512-'),
  }));

const say = (text) => process.stdout.write(`${text}\n`);
const byLicence = (some) => {
  const groups = new Map();
  for (const one of some) groups.set(one.licence, [...(groups.get(one.licence) ?? []), one]);
  return [...groups].sort(([, a], [, b]) => b.length - a.length);
};

const shipped = all.filter((one) => one.shipped);
say(`${shipped.length} packages built into the program, ${all.length - shipped.length} for working on it\n`);
for (const [licence, some] of byLicence(shipped))
  say(
    `${licence}: ${some
      .map(({ name, version }) => `${name} ${version}`)
      .sort()
      .join(', ')}`,
  );
say('\nfor working on it:');
for (const [licence, some] of byLicence(all.filter((one) => !one.shipped))) say(`${licence}: ${some.length}`);

const withScripts = all.filter((one) => one.scripts);
say(`\ninstall scripts of their own: ${withScripts.map(({ name }) => name).join(', ') || 'none'}`);
const loose = all.filter((one) => !one.pinned);
say(`without a checksum in the lock file: ${loose.map(({ name }) => name).join(', ') || 'none'}`);

const questionable = shipped.filter(({ licence }) => !isFree(licence));
for (const { name, licence } of questionable) say(`look at the licence of ${name}: ${licence}`);
const beside = all.filter((one) => one.installed);
say(`installed beside the program: ${beside.map(({ name }) => name).join(', ') || 'none'}`);
process.exitCode = questionable.length > 0 || beside.length > 0 ? 1 : 0;
