import { Box, Text } from 'ink';
import Spinner from 'ink-spinner';
import { words } from '../texts/message.js';
import type { Style } from './context.js';
import type { WaitOptions } from './options.js';

/** Something is really being waited for (a slow disk): the only place where anything turns by itself. */
export const WaitingScreen = ({ wait, style }: { readonly wait: WaitOptions; readonly style: Style }) => (
  <Box paddingX={2} paddingY={1}>
    {style.still ? null : (
      <Box marginRight={1} aria-hidden>
        <Spinner type={style.ascii ? 'line' : 'dots'} />
      </Box>
    )}
    <Text {...style.paints.strong}>{words(wait.say, wait.printer)}</Text>
  </Box>
);
