import { render } from 'ink-testing-library';
import { expect, it } from 'vitest';
import { monochrome } from '../../source/screen/palette.js';
import { WaitingScreen } from '../../source/screen/waiting.js';
import { message } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';

const plain = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });

it('says what is waited for, and that it is still alive', () => {
  const wait = { say: message('wait.disk'), printer: plain };
  const { lastFrame, unmount } = render(
    <WaitingScreen wait={wait} style={{ ascii: true, paints: monochrome, still: false }} />,
  );
  expect(lastFrame()).toMatch(/^\s*[-\\|/] Looking for earlier cooks/m);
  unmount();
});
