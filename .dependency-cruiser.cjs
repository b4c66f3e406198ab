/** The order of the rooms (DEVELOPERS.md): a room may import only rooms above it in this list. */
const rooms = [
  'units',
  'texts',
  'sugar',
  'recipe',
  'kitchen',
  'batch',
  'forecast',
  'cook',
  'files',
  'journal',
  'session',
  'rehearsal',
  'lessons',
  'sheets',
  'screen',
  'commands',
];
/** The first eight are pure: no clock, no file, no React, no process. */
const pure = rooms.slice(0, 8);

/** Packages that may be built into the program. */
const builtIn = [
  'd3-scale',
  'd3-shape',
  'env-paths',
  'figlet',
  'ink',
  'ink-spinner',
  'leven',
  'numeric-quantity',
  'react',
  'react-dom',
  'wrap-ansi',
  'yaml',
  'zod',
];

// Tests point the same rules at a small tree that breaks them (tests/fixtures/rooms).
const root = process.env.ROOMS_ROOT ?? 'source';

/** Types may be shared in both directions between units and texts: sentences print, parsers say what is wrong. */
const orderRules = rooms.map((room, index) => ({
  name: `order-${room}`,
  comment: `${room}/ may import only rooms above it`,
  severity: 'error',
  from: { path: `^${root}/${room}/` },
  to: {
    path: `^${root}/(${[...rooms.slice(index + 1), 'cli'].join('|')})(/|\\.ts)`,
    ...(room === 'units' ? { dependencyTypesNot: ['type-only'] } : {}),
  },
}));

module.exports = {
  forbidden: [
    ...orderRules,
    {
      name: 'pure-rooms',
      comment: 'no clock, file, process, terminal or React in the pure rooms',
      severity: 'error',
      from: { path: `^${root}/(${pure.join('|')})/` },
      to: {
        path: '(^|/)(node:)?(fs|os|process|child_process|timers|net|http|worker_threads|crypto)(/|$)|node_modules/(react|ink)',
        dependencyTypes: ['core', 'npm', 'npm-dev'],
      },
    },
    {
      name: 'screen-sees-no-physics',
      comment: 'the screen never sees files, journals or physics; it gets a session',
      severity: 'error',
      from: { path: `^${root}/screen/` },
      to: { path: `^${root}/(files|journal|forecast)/`, dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no-circles',
      severity: 'error',
      from: { path: `^${root}/` },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'chosen-packages',
      comment: 'what is built into the program is named in this file; tools and test libraries are not',
      severity: 'error',
      from: { path: `^${root}/` },
      to: {
        path: 'node_modules/',
        pathNot: `node_modules/(@types/)?(${builtIn.join('|')})/`,
        dependencyTypesNot: ['type-only'],
      },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs'],
      conditionNames: ['import', 'node', 'default'],
    },
  },
};
