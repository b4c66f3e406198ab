import type { Plugin as EsbuildPlugin } from 'esbuild';
import type { FileCoverageData } from 'istanbul-lib-coverage';
import type { Plugin as VitePlugin } from 'vitest/config';

export const countsFolder: string;
export const withCounters: (
  code: string,
  path: string,
) => { readonly code: string; readonly map: unknown; readonly unrun: FileCoverageData };
export const countingInVite: VitePlugin;
export const countingInEsbuild: (entry: string) => EsbuildPlugin;
