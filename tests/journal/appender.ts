import { openJournal } from '../../source/journal/open.js';

// Appends as fast as it can and reports each saved event, until it is killed.
const answer = await openJournal({ path: process.argv[2] ?? '' });
if ('problem' in answer) {
  process.stdout.write(`problem ${answer.problem.id}\n`);
  process.exit(1);
}
const { journal, recovered } = answer;
process.stdout.write(`resumed ${recovered.entries.length}\n`);
for (;;) {
  const seq = journal.nextSeq;
  const kind = seq === 1 ? 'opened' : 'note';
  const text = 'x'.repeat((seq * 37) % 900);
  const event = { seq, t: seq, at: new Date().toISOString(), up: null, kind, text };
  if ((await journal.append(event)) === 'saved') process.stdout.write(`saved ${seq}\n`);
}
