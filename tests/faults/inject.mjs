// Loaded into the real program before anything else (node --import): makes its own writes to files fail as a disk
// would, for as long as FAULT_FILE says so, and notes at the end how much memory it took.
import { readFileSync, writeFileSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const {
  FAULT_FILE: faultFile,
  FAULT_NTH: nth,
  FAULT_CODE: code = 'EIO',
  FAULT_THROWS: throws,
  RSS_FILE: rssFile,
} = process.env;

/** What fails now: "EIO write", "EDQUOT datasync", or nothing. */
const wish = () => {
  try {
    return readFileSync(faultFile ?? '', 'utf8').trim();
  } catch {
    return '';
  }
};

let calls = 0;
const struck = (operation) => {
  calls += 1;
  if (nth !== undefined) return calls === Number(nth) ? code : null;
  const [wished, only] = wish().split(' ');
  return wished && (!only || only === operation) ? wished : null;
};

if (faultFile !== undefined || nth !== undefined) {
  const probe = await open(process.execPath, 'r');
  const handles = Object.getPrototypeOf(probe);
  await probe.close();
  for (const operation of ['write', 'datasync', 'sync', 'writeFile']) {
    const real = handles[operation];
    handles[operation] = function (...args) {
      const wrong = struck(operation);
      return wrong === null
        ? real.apply(this, args)
        : Promise.reject(Object.assign(new Error(`${wrong}: made to fail`), { code: wrong }));
    };
  }
  syncBuiltinESMExports();
}

// A mistake of the program's own, at a moment that the test chooses.
if (throws !== undefined)
  process.on('SIGUSR2', () => {
    const mistake = new Error('broke on purpose');
    if (throws === 'exception') throw mistake;
    void Promise.reject(mistake);
  });

if (rssFile !== undefined)
  process.on('exit', () => {
    writeFileSync(rssFile, String(Math.round(process.resourceUsage().maxRSS / 1024)));
  });
