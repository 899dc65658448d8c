import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { type HouseFile, houseFiles } from './the-house.js';

/* What the page says stands in src/web/words, where another language can stand beside it. */

/** Rooms whose words all stand there. One folder more is one name more. */
const APART = ['features', 'frame', 'outbox', 'pages', 'parts', 'sight'];

/** Attributes that are read out or shown, in our parts and in the library's. */
const SPOKEN = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-roledescription',
  'aria-valuetext',
  'caption',
  'description',
  'error',
  'heading',
  'hint',
  'label',
  'placeholder',
  'thumbLabel',
  'title',
  'what',
]);

/** Names that are the same in every language, and words that only stand for what a person would write. */
const NAMES = new Set(['Tautwork']);

describe('the words of the page', () => {
  it.each(APART)('stand in src/web/words, not in what shows them: %s', (folder) => {
    const files = houseFiles([`src/web/${folder}`], (path) => path.endsWith('.tsx'));
    expect(files.flatMap(spokenIn)).toEqual([]);
  });

  it('are found wherever they can stand', () => {
    const path = 'x.tsx';
    const text = `const columns = [{ heading: 'Gauge', cell: (row) => <b>{row.late ? 'late' : \`in \${row.days} days\`}</b> }];
       const page = <p title="A title" className="not this" data-x='nor this'>Some words · <i>·</i> {'more'} {words.fine}</p>;`;
    const found = spokenIn({ path, text });
    expect(found.map((line) => line.replace(/^x\.tsx:\d+: /, ''))).toEqual([
      'Gauge',
      'late',
      'in … days',
      'A title',
      'Some words ·',
      'more',
    ]);
  });
});

/** Words that stand in a file as they are shown, `file:line: words`. */
function spokenIn({ path, text }: HouseFile): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    for (const [at, words] of spokenBy(node)) {
      const { line } = source.getLineAndCharacterOfPosition(at.getStart(source));
      if (/\p{L}/u.test(words) && !NAMES.has(words)) found.push(`${path}:${line + 1}: ${words}`);
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

/** What a node shows by itself: text between tags, an expression there, a spoken attribute, a field of a column or a choice. */
function spokenBy(node: ts.Node): readonly (readonly [ts.Node, string])[] {
  if (ts.isJsxText(node)) return [[node, node.text.replace(/\s+/g, ' ').trim()]];
  if (ts.isJsxExpression(node) && !ts.isJsxAttribute(node.parent)) return literalsOf(node.expression);
  if (ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText()) && node.initializer)
    return ts.isJsxExpression(node.initializer)
      ? literalsOf(node.initializer.expression)
      : literalsOf(node.initializer as ts.Expression);
  if (ts.isPropertyAssignment(node) && SPOKEN.has(node.name.getText())) return literalsOf(node.initializer);
  return [];
}

/** The texts that an expression may come to: of a choice both, of a template what stands between its holes. */
function literalsOf(node: ts.Expression | undefined): readonly (readonly [ts.Node, string])[] {
  if (!node) return [];
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [[node, node.text]];
  if (ts.isTemplateExpression(node))
    return [[node, [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…')]];
  if (ts.isConditionalExpression(node)) return [...literalsOf(node.whenTrue), ...literalsOf(node.whenFalse)];
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return literalsOf(node.expression);
  if (ts.isBinaryExpression(node)) {
    if (GIVES_RIGHT.has(node.operatorToken.kind)) return literalsOf(node.right);
    return GIVES_EITHER.has(node.operatorToken.kind)
      ? [...literalsOf(node.left), ...literalsOf(node.right)]
      : [];
  }
  return [];
}

const GIVES_RIGHT = new Set([ts.SyntaxKind.AmpersandAmpersandToken]);
/** One of its sides, or both together; a comparison shows neither. */
const GIVES_EITHER = new Set([
  ts.SyntaxKind.BarBarToken,
  ts.SyntaxKind.QuestionQuestionToken,
  ts.SyntaxKind.PlusToken,
]);
