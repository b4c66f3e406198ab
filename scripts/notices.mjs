import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const packageOf = (path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1];

const noticeIn = (folder) => {
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying|notice)/i.test(name));
  return file === undefined ? null : readFileSync(join(folder, file), 'utf8').trim();
};

/** The packages whose code is in what esbuild wrote, as its metafile says: name, version, licence and notice of each. */
export const packagesIn = ({ outputs }) => {
  const folders = new Set(
    Object.values(outputs).flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => {
        const folder = bytesInOutput > 0 ? packageOf(path) : undefined;
        return folder === undefined ? [] : [folder];
      }),
    ),
  );
  return [...folders].sort().map((folder) => {
    const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const by = typeof author === 'string' ? author : author?.name;
    return { name, version, licence: license, notice: noticeIn(folder) ?? `Licence: ${license}. By ${by}.` };
  });
};

/** What has to go along with the program: the notices of everything that is built into it. */
export const noticesOf = (packages) =>
  packages
    .map(({ name, version, licence, notice }) => `${name} ${version} (${licence})\n\n${notice}\n`)
    .join(`\n${'-'.repeat(80)}\n\n`);
