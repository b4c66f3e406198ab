import { closeSync, writeSync } from 'node:fs';

const nothing = new Uint8Array();

/** The terminal behind this is gone for good: its window was closed. */
const isGone = (fd: number): boolean => {
  try {
    writeSync(fd, nothing);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EIO';
  }
};

let watches = false;

/**
 * At its very end Node gives every terminal its modes back, and aborts with a memory dump where one is gone
 * (node::ResetStdio, Node 20). A number that is closed is passed over.
 */
export const letGoOfGoneTerminals = (): void => {
  if (watches || process.platform === 'win32') return;
  watches = true;
  process.on('exit', () => {
    for (const fd of [0, 1, 2]) if (isGone(fd)) closeSync(fd);
  });
};
