/** Why a text could not be read as JSON, and the line on which that showed. */
export interface JsonFault {
  readonly why: string;
  readonly line: number;
  /** A cap was passed, rather than the text being broken. */
  readonly tooLarge: boolean;
}

export interface JsonCaps {
  /** Characters of one text. */
  readonly text: number;
  /** Entries of all lists that are themselves lists or objects. */
  readonly rows: number;
}

export type JsonRead = { readonly ok: true; readonly value: unknown } | ({ readonly ok: false } & JsonFault);

/** Lists and objects inside one another; a plan needs 5. */
const DEEPEST = 12;

/** Keys that reach an object's prototype. */
const REFUSED_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;

class Fault extends Error {
  readonly tooLarge: boolean;

  constructor(why: string, tooLarge = false) {
    super(why);
    this.tooLarge = tooLarge;
  }
}

/** Reads JSON (RFC 8259) once, front to back, and stops at the first cap passed or key refused. */
class Reader {
  readonly #text: string;
  readonly #caps: JsonCaps;
  #at = 0;
  #rows = 0;

  constructor(text: string, caps: JsonCaps) {
    this.#text = text;
    this.#caps = caps;
  }

  get line(): number {
    let line = 1;
    for (let i = 0; i < this.#at && i < this.#text.length; i++) if (this.#text[i] === '\n') line++;
    return line;
  }

  document(): unknown {
    const value = this.#value(0);
    if (this.#next() !== '') throw new Fault('something stands after the end of the document');
    return value;
  }

  #take(pattern: RegExp): string {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0] ?? '';
    this.#at += found.length;
    return found;
  }

  /** The next sign that is not a space, without passing it; '' at the end. */
  #next(): string {
    this.#take(SPACE);
    return this.#text.charAt(this.#at);
  }

  #expect(sign: string): void {
    const next = this.#next();
    if (next !== sign) throw new Fault(next === '' ? 'the text ends too early' : `“${sign}” is missing`);
    this.#at++;
  }

  #value(depth: number): unknown {
    if (depth > DEEPEST) throw new Fault(`lists stand more than ${DEEPEST} deep inside one another`, true);
    const next = this.#next();
    if (next === '{') return this.#object(depth);
    if (next === '[') return this.#list(depth);
    if (next === '"') return this.#string();
    const word = this.#take(WORD);
    if (word !== '') return word === 'null' ? null : word === 'true';
    const number = this.#take(NUMBER);
    if (number === '') throw new Fault(next === '' ? 'the text ends too early' : 'a value is missing');
    const value = Number(number);
    if (!Number.isFinite(value)) throw new Fault('a number is too large');
    return value;
  }

  #string(): string {
    const start = this.#at++;
    let length = 0;
    for (;;) {
      const sign = this.#text.charAt(this.#at);
      if (sign === '') throw new Fault('the text ends too early');
      this.#at += sign === '\\' ? (this.#text[this.#at + 1] === 'u' ? 6 : 2) : 1;
      if (sign === '"') break;
      if (++length > this.#caps.text) {
        throw new Fault(`a text is longer than ${this.#caps.text} characters`, true);
      }
    }
    try {
      return JSON.parse(this.#text.slice(start, this.#at)) as string;
    } catch {
      throw new Fault('a text holds a character or escape that JSON does not allow');
    }
  }

  #list(depth: number): unknown[] {
    const list: unknown[] = [];
    this.#at++;
    if (this.#next() === ']') {
      this.#at++;
      return list;
    }
    for (;;) {
      const next = this.#next();
      if ((next === '{' || next === '[') && ++this.#rows > this.#caps.rows) {
        throw new Fault(`its lists have more than ${this.#caps.rows} rows`, true);
      }
      list.push(this.#value(depth + 1));
      if (this.#next() !== ',') break;
      this.#at++;
    }
    this.#expect(']');
    return list;
  }

  #object(depth: number): object {
    const object: Record<string, unknown> = {};
    this.#at++;
    if (this.#next() === '}') {
      this.#at++;
      return object;
    }
    for (;;) {
      if (this.#next() !== '"') this.#expect('"');
      const key = this.#string();
      if (REFUSED_KEYS.has(key)) throw new Fault(`“${key}” is not allowed as a key`);
      if (Object.hasOwn(object, key)) throw new Fault(`the key “${key.slice(0, 40)}” stands twice`);
      this.#expect(':');
      object[key] = this.#value(depth + 1);
      if (this.#next() !== ',') break;
      this.#at++;
    }
    this.#expect('}');
    return object;
  }
}

/**
 * Reads JSON that a stranger may have written: as `JSON.parse` would, but with caps, without keys that stand twice or
 * reach a prototype, and with the line on which it went wrong. Never throws.
 */
export function readJson(text: string, caps: JsonCaps): JsonRead {
  const reader = new Reader(text, caps);
  try {
    return { ok: true, value: reader.document() };
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    return { ok: false, why: error.message, line: reader.line, tooLarge: error.tooLarge };
  }
}
