import type { Plugin } from 'esbuild';

export const briskInk: Plugin;
