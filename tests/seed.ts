import fc from 'fast-check';

/**
 * Random tests draw the same examples in every run of `npm test`, so that what fails there was broken by the last
 * change. New examples are for `npm run torture`, which draws and names a seed of its own.
 */
fc.configureGlobal({ seed: Number(process.env.KETTLEHAND_SEED ?? 1450) });
