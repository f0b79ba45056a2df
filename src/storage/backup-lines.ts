/** Lines that are read, checked and written together. */
const mostLines = 5000;
/** Photos and files of loggers are long: fewer of them fit. */
const mostCharacters = 4_000_000;
/** A logger's file of 40 MB, the biggest that is kept, as base64 with its record around it. */
export const longestLine = 60_000_000;
/** A file of something else may have no lines at all. */
const longestFirst = 64_000;

export interface LineChunk {
  /** Number of the first line in it, counted from 1. */
  from: number;
  lines: string[];
  /** The file ends with it. */
  last: boolean;
}

/** Thrown on a line that would not fit in memory, before it is read whole. */
export class LineTooLong extends Error {
  constructor(
    readonly line: number,
    length: number,
  ) {
    super(`more than ${length} characters in one line`);
  }
}

/**
 * The lines of a file, a chunk at a time, however big the file is; a chunk begins and ends at the same lines in every
 * reading. Share sheets and editors put a byte order mark before, carriage returns at the ends of lines and empty
 * lines at the end: they are left out.
 */
export async function* readLines(file: Blob): AsyncGenerator<LineChunk> {
  const gathered = new Gatherer();
  const decoder = new TextDecoder();
  const reader = file.stream().getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      const text = done ? decoder.decode() : decoder.decode(value, { stream: true });
      yield* gathered.take(text);
      if (done) break;
    }
    yield* gathered.end();
  } finally {
    await reader.cancel().catch(() => {});
  }
}

class Gatherer {
  private begun: string[] = [];
  private begunLength = 0;
  private line = 1;
  /** The first of the empty lines that nothing but empty lines followed so far. */
  private emptySince: number | undefined;
  private chunk: LineChunk = { from: 1, lines: [], last: false };
  private characters = 0;

  *take(text: string): Generator<LineChunk> {
    let start = 0;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      yield* this.ended(text.slice(start, end));
      start = end + 1;
    }
    this.begun.push(text.slice(start));
    this.begunLength += text.length - start;
    const longest = this.line === 1 ? longestFirst : longestLine;
    if (this.begunLength > longest) throw new LineTooLong(this.line, longest);
  }

  *end(): Generator<LineChunk> {
    yield* this.ended('');
    if (this.chunk.lines.length > 0) yield { ...this.chunk, last: true };
  }

  private *ended(rest: string): Generator<LineChunk> {
    let text = this.begun.length === 0 ? rest : this.begun.join('') + rest;
    this.begun = [];
    this.begunLength = 0;
    if (text.endsWith('\r')) text = text.slice(0, -1);
    if (text.trim() === '') this.emptySince ??= this.line;
    else {
      // One of them is enough to be refused for.
      if (this.emptySince !== undefined) yield* this.put('', this.emptySince);
      this.emptySince = undefined;
      yield* this.put(text, this.line);
    }
    this.line += 1;
  }

  /** A full chunk goes out when there is a line after it: only then it is known not to be the last. */
  private *put(text: string, line: number): Generator<LineChunk> {
    if (this.chunk.lines.length >= mostLines || this.characters >= mostCharacters) {
      yield this.chunk;
      this.chunk = { from: line, lines: [], last: false };
      this.characters = 0;
    }
    if (this.chunk.lines.length === 0) this.chunk.from = line;
    this.chunk.lines.push(text);
    this.characters += text.length;
  }
}
