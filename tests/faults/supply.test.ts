import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

type Manifest = {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
};
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;

it('every dependency is named by its exact version', () => {
  const loose = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
  );
  expect(loose).toEqual([]);
});

it('nothing of ours runs while it is installed', () => {
  const running = [
    'preinstall',
    'install',
    'postinstall',
    'prepare',
    'prepublish',
    'preprepare',
    'postprepare',
  ];
  expect(Object.keys(manifest.scripts).filter((name) => running.includes(name))).toEqual([]);
});

it('what the program is made of asks for no more than its notice, and is pinned by checksum', () => {
  const { status, stdout } = spawnSync(process.execPath, ['scripts/licences.mjs'], { encoding: 'utf8' });
  // Ink draws, and is in it; what the tests run on is not.
  expect(stdout).toMatch(/^MIT: .*\bink \d/m);
  expect(stdout).not.toMatch(/^MIT: .*\bvitest \d/m);
  expect(stdout).toContain('installed beside the program: none');
  expect(stdout).toContain('without a checksum in the lock file: none');
  expect(status).toBe(0);
});
