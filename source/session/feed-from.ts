import { tailLines } from '../files/tail.js';
import type { Clock } from './clock.js';
import { Feed } from './feed.js';
import type { Session } from './session.js';

/** A feed that is read from now on, beside whatever else is typed; `end` stops reading and waits for the last of it. */
export const feedFrom = (
  session: Session,
  path: string,
  clock: Clock,
): { readonly feed: Feed; readonly end: () => Promise<void> } => {
  const stop = new AbortController();
  const feed = new Feed({ session, path, lines: tailLines(path, { signal: stop.signal }), clock });
  const running = feed.run();
  return {
    feed,
    end: async () => {
      stop.abort();
      await running;
    },
  };
};
