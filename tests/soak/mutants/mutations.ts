import { parseAst } from 'vite';

/** One change to a module's source. */
export interface Mutation {
  readonly start: number;
  readonly end: number;
  /** What stands there instead. */
  readonly text: string;
  readonly line: number;
  readonly says: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (it: unknown): it is Node =>
  typeof it === 'object' && it !== null && 'type' in it && 'start' in it;

const OTHER_SIGN: Readonly<Record<string, string>> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  '**': '*',
  '%': '*',
};
const NEGATED: Readonly<Record<string, string>> = {
  '<': '>=',
  '<=': '>',
  '>': '<=',
  '>=': '<',
  '===': '!==',
  '!==': '===',
};
const OTHER_CALL: Readonly<Record<string, string>> = {
  'Math.min': 'Math.max',
  'Math.max': 'Math.min',
  'Math.sin': 'Math.cos',
  'Math.cos': 'Math.sin',
  'Math.tan': 'Math.sin',
  'Math.ceil': 'Math.floor',
  'Math.floor': 'Math.ceil',
  sin: 'cos',
  cos: 'sin',
};
/** What a call comes to without the function, where it takes one figure. */
const DROPPED = new Set([
  'Math.abs',
  'Math.sqrt',
  'Math.asin',
  'Math.atan',
  'degrees',
  'radians',
  'cos',
  'sin',
  'tan',
]);

/** Parts in which nothing is worked out: types, words, records but for what they run, and reasons. */
const SKIPPED = new Set([
  'TemplateLiteral',
  'ImportDeclaration',
  'TSInterfaceDeclaration',
  'TSTypeAliasDeclaration',
]);

/** Every change of one sign, factor or term that a module's source allows. */
export function mutationsOf(source: string): Mutation[] {
  const found: Mutation[] = [];
  const textOf = (it: Node): string => source.slice(it.start, it.end);
  const lineOf = (at: number): number => source.slice(0, at).split('\n').length;
  const put = (it: Node, text: string, within = ''): void => {
    const now = textOf(it);
    if (text !== now)
      found.push({
        start: it.start,
        end: it.end,
        text,
        line: lineOf(it.start),
        says: `${now} → ${text}${within}`.replace(/\s+/g, ' '),
      });
  };

  const binary = (it: Node): void => {
    const [left, right, operator] = [it.left as Node, it.right as Node, it.operator as string];
    const [a, b] = [textOf(left), textOf(right)];
    const isWords = [left, right].some(
      (side) =>
        side.type === 'TemplateLiteral' || (side.type === 'Literal' && typeof side.value === 'string'),
    );
    if (isWords) return;
    const sign = OTHER_SIGN[operator] ?? NEGATED[operator];
    if (sign !== undefined) put(it, `((${a}) ${sign} (${b}))`);
    if (operator in OTHER_SIGN) {
      put(it, `(${a})`);
      if (operator !== '**') put(it, `(${b})`);
    }
  };

  const call = (it: Node): void => {
    const name = textOf(it.callee as Node);
    const given = it.arguments as readonly Node[];
    const other = OTHER_CALL[name];
    if (other !== undefined) put(it, `${other}(${given.map(textOf).join(', ')})`);
    if (DROPPED.has(name) && given.length === 1) put(it, `(${textOf(given[0] as Node)})`);
    if (name === 'Math.min' || name === 'Math.max') {
      for (const left of given.length > 1 ? given : []) {
        put(
          it,
          `${name}(${given
            .filter((arg) => arg !== left)
            .map(textOf)
            .join(', ')})`,
        );
      }
    }
    if (name === 'Math.hypot') {
      for (const left of given)
        put(
          it,
          `Math.hypot(${given
            .filter((arg) => arg !== left)
            .map(textOf)
            .join(', ')})`,
        );
    }
  };

  /** A figure is told with what it stands in, as the same one may stand in a line twice. */
  const literal = (it: Node, parent: Node | undefined): void => {
    if (typeof it.value !== 'number') return;
    // A whole number may be a count, which a tenth more would leave as it is.
    const other = Number.isInteger(it.value) && it.value < 100 ? it.value + 1 : it.value * 1.1;
    put(
      it,
      String(other),
      /^(Binary|Logical|Call)Expression$/.test(parent?.type ?? '') ? ` in ${textOf(parent as Node)}` : '',
    );
  };

  const visit = (it: Node, inRecord: boolean, parent?: Node): void => {
    if (SKIPPED.has(it.type) || it.type.startsWith('TS')) {
      // A value under a type's word is a value all the same.
      if (isNode(it.expression)) visit(it.expression, inRecord);
      return;
    }
    const isRecord = it.type === 'CallExpression' && /^(record|pinRecord)$/.test(textOf(it.callee as Node));
    if (!inRecord) {
      if (it.type === 'BinaryExpression') binary(it);
      if (it.type === 'CallExpression') call(it);
      if (it.type === 'Literal') literal(it, parent);
      if (it.type === 'UnaryExpression' && it.operator === '-') put(it, `(${textOf(it.argument as Node)})`);
      if (it.type === 'UnaryExpression' && it.operator === '!') put(it, `(${textOf(it.argument as Node)})`);
      // What stands in for a figure that is always there is for the types alone.
      if (it.type === 'LogicalExpression' && it.operator === '??') {
        visit(it.left as Node, inRecord);
        return;
      }
      if (it.type === 'LogicalExpression') {
        put(it, `(${textOf(it.left as Node)})`);
        put(it, `(${textOf(it.right as Node)})`);
      }
      // Whether there is an answer at all is no part of the sum.
      if (it.type === 'ConditionalExpression' && !/NoAnswer|typeof/.test(textOf(it.test as Node))) {
        put(it, `(${textOf(it.consequent as Node)})`);
        put(it, `(${textOf(it.alternate as Node)})`);
      }
      if (it.type === 'NewExpression' && textOf(it.callee as Node) === 'NoAnswer') return;
      // A place in a list is no factor.
      if (it.type === 'MemberExpression' && it.computed === true) {
        visit(it.object as Node, inRecord);
        if ((it.property as Node).type !== 'Literal') visit(it.property as Node, inRecord);
        return;
      }
      if (it.type === 'ArrayPattern' || it.type === 'AssignmentPattern') return;
    }
    // What an argument may be is told to whoever calls, and takes no part in the sum.
    if (it.type === 'Property' && ['above', 'least', 'default'].includes(textOf(it.key as Node))) return;
    if (inRecord && it.type === 'Property') {
      if (textOf(it.key as Node) === 'run') visit(it.value as Node, false);
      return;
    }
    for (const [key, child] of Object.entries(it)) {
      if (
        key === 'typeAnnotation' ||
        key === 'returnType' ||
        key === 'typeParameters' ||
        key === 'typeArguments'
      )
        continue;
      for (const node of Array.isArray(child) ? child : [child])
        if (isNode(node)) visit(node, inRecord || isRecord, it);
    }
  };

  for (const statement of working(source, textOf)) visit(statement, false);
  return found;
}

/** The name that a statement declares, where it declares one. */
function declared(statement: Node): string | undefined {
  const it = isNode(statement.declaration) ? statement.declaration : statement;
  const [first] = (it.declarations as readonly Node[] | undefined) ?? [it];
  const id = first?.id;
  return isNode(id) ? (id.name as string) : undefined;
}

/** What records run: the values of `run` in a text. */
const RUNS = /\brun(?:: ([\s\S]*?),\n\}|[,(])/g;

/**
 * The statements of a module that work something out: those it exports but for records, what records run, and all that
 * these use. Figures of worked examples and what arguments mean are not among them.
 */
function working(source: string, textOf: (it: Node) => string): Node[] {
  const { body } = parseAst(source, { lang: 'ts' }) as unknown as { body: Node[] };
  const isRecord = (it: Node): boolean =>
    /=\s*(?:pinRecord|record)\(|as const satisfies TableFunction/.test(textOf(it));
  const isArguments = (it: Node): boolean => /(?:Argument|Arguments)$/.test(declared(it) ?? '');
  const wanted = new Set(
    body.filter((it) => it.type === 'ExportNamedDeclaration' && !isRecord(it) && !isArguments(it)),
  );
  const texts = [...wanted].map(textOf);
  for (const it of body.filter(isRecord)) {
    for (const [, runs = ''] of textOf(it).matchAll(RUNS)) texts.push(runs);
    wanted.add(it);
  }
  for (let text = texts.pop(); text !== undefined; text = texts.pop()) {
    for (const it of body) {
      const name = declared(it);
      if (name === undefined || wanted.has(it) || isArguments(it) || !new RegExp(`\\b${name}\\b`).test(text))
        continue;
      wanted.add(it);
      texts.push(textOf(it));
    }
  }
  return body.filter((it) => wanted.has(it));
}

/** A source with one change made. */
export const mutated = (source: string, { start, end, text }: Mutation): string =>
  source.slice(0, start) + text + source.slice(end);
