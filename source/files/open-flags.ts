import { constants } from 'node:fs';

/** How a file is opened. Windows knows only some: one that it does not know is undefined there, and adds nothing in an OR. */
export const { O_RDONLY, O_WRONLY, O_RDWR, O_CREAT, O_EXCL, O_NOFOLLOW, O_NONBLOCK, O_NOCTTY } = constants;
