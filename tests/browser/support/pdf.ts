import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

type Matrix = readonly [number, number, number, number, number, number];

const times = (m: Matrix, [a, b, c, d, e, f]: Matrix): Matrix => [
  m[0] * a + m[2] * b,
  m[1] * a + m[3] * b,
  m[0] * c + m[2] * d,
  m[1] * c + m[3] * d,
  m[0] * e + m[2] * f + m[4],
  m[1] * e + m[3] * f + m[5],
];

export interface PdfPage {
  /** mm */
  width: number;
  height: number;
  /** Length of every path that is one straight line, mm */
  lines: number[];
}

const points = 72;
const inMillimeters = (pt: number) => (pt / points) * 25.4;
const number = (of: unknown, i: number): number => Number(Object.values(of as object)[i] ?? Number.NaN);

/** What a printer would draw: the straight lines of each page of a PDF, measured. */
export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const { OPS } = await getResolvedPDFJS();
  const pdf = await getDocumentProxy(bytes, { verbosity: 0 });
  const pages: PdfPage[] = [];
  for (let n = 1; n <= pdf.numPages; n += 1) {
    const page = await pdf.getPage(n);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const lines: number[] = [];
    let now: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    const { fnArray, argsArray } = await page.getOperatorList();
    fnArray.forEach((op, i) => {
      const args: unknown = argsArray[i];
      if (op === OPS.save) kept.push(now);
      else if (op === OPS.restore) now = kept.pop() ?? now;
      else if (op === OPS.transform) now = times(now, Object.values(args as object) as unknown as Matrix);
      else if (op === OPS.constructPath) lines.push(...straight(args, now));
    });
    pages.push({ width: inMillimeters(right - left), height: inMillimeters(top - bottom), lines });
  }
  return pages;
}

/** A path of one move and one line: 0 x y 1 x y. */
function straight(args: unknown, m: Matrix): number[] {
  const [, [path] = []] = args as [unknown, unknown[]?];
  if (!path || Object.values(path).length !== 6 || number(path, 0) !== 0 || number(path, 3) !== 1) return [];
  const [dx, dy] = [number(path, 4) - number(path, 1), number(path, 5) - number(path, 2)];
  return [inMillimeters(Math.hypot(m[0] * dx + m[2] * dy, m[1] * dx + m[3] * dy))];
}
