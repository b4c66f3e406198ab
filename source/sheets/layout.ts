/** Widest line of a printed sheet: fits an 80-column terminal and a page. */
export const sheetColumns = 78;

/**
 * Words in lines of at most `columns`. Spaces in front of the text stay; every further line begins with `indent`
 * spaces, counted in. A word longer than a line keeps its line to itself.
 */
export const wrapped = (text: string, columns = sheetColumns, indent = 0): string[] => {
  const front = text.slice(0, text.search(/[^ ]|$/));
  const lines: string[] = [];
  let line = front;
  let empty = true;
  for (const word of text.slice(front.length).split(/(?<=[^ ]) /)) {
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = ' '.repeat(indent) + word;
    } else {
      line += empty ? word : ` ${word}`;
    }
    empty = false;
  }
  return [...lines, line];
};

/** A label in a column of its own, the text beside it. */
export const beside = (label: string, text: string, column: number): string[] =>
  wrapped(`${label.padEnd(column)}${text}`, sheetColumns, column).map((line) => line.trimEnd());
