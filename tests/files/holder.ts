import { takeLock } from '../../source/files/lock.js';

// Takes the lock, says so, and stays until it is killed.
const answer = await takeLock(process.argv[2] ?? '');
if ('lock' in answer) process.stdout.write(`took ${process.pid}\n`);
else if ('heldBy' in answer) process.stdout.write(`held by ${answer.heldBy.pid}\n`);
else process.stdout.write(`problem ${answer.problem.id}\n`);
setInterval(() => undefined, 60_000);
