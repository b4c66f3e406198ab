import type { BuildOptions } from 'esbuild';

export const terminalProgram: BuildOptions;
