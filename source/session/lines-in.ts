import { StringDecoder } from 'node:string_decoder';

/** A line longer than this is cut: nobody types it, and memory stays bounded. */
const longestLine = 64 * 1024;

/** Lines of a stream, without their ends; a last line without an end counts. Broken UTF-8 becomes U+FFFD. */
export async function* linesOf(stream: AsyncIterable<Buffer | string>): AsyncGenerator<string> {
  const decoder = new StringDecoder('utf8');
  let rest = '';
  let skipping = false;
  for await (const chunk of stream) {
    rest += typeof chunk === 'string' ? chunk : decoder.write(chunk);
    const lines = rest.split(/\r\n|\n|\r(?!$)/);
    rest = lines.pop() ?? '';
    for (const line of lines) {
      if (!skipping) yield line.slice(0, longestLine);
      skipping = false;
    }
    if (rest.length > longestLine) {
      if (!skipping) yield rest.slice(0, longestLine);
      skipping = true;
      rest = '';
    }
  }
  rest += decoder.end();
  if (rest !== '' && !skipping) yield rest;
}
