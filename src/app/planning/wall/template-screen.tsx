import { useSignal } from '@preact/signals';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Choice, SelectField } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { type CutPiece, piecesOrProblem } from '#app/planning/cutting/cut-pieces.ts';
import { dimension } from '#app/planning/cutting/dimensions.ts';
import type { Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { settings } from '#app/state/settings.ts';
import { TemplateFile } from './template-file.tsx';
import { TemplateMap } from './template-map.tsx';
import { turnWords } from './template-marks.ts';
import { TemplateSheets } from './template-sheets.tsx';
import { templateSvg } from './template-svg.ts';
import { type Paper, sheetsFor } from './template-tiles.ts';
import { hasWall, type WalledPlan } from './wall-model.ts';
import './template.css';

const papers = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const;

const fileName = (plan: WalledPlan, ending: string) =>
  `${plan.name.trim().replace(/[^\p{L}\p{N}]+/gu, '-') || 'template'}.${ending}`;

async function dxfFile(plan: WalledPlan, pieces: readonly CutPiece[]): Promise<File> {
  const { templateDxf } = await import('./template-dxf.ts');
  return new File([await templateDxf(pieces)], fileName(plan, 'dxf'), { type: 'image/vnd.dxf' });
}

async function svgFile(plan: WalledPlan, pieces: readonly CutPiece[]): Promise<File> {
  return new File([templateSvg(plan.name, pieces)], fileName(plan, 'svg'), { type: 'image/svg+xml' });
}

function TemplateActions({
  plan,
  pieces,
  count,
}: {
  plan: WalledPlan;
  pieces: readonly CutPiece[];
  count: number;
}) {
  const says = useSignal('');
  const say = (words: string) => {
    says.value = words;
  };
  return (
    <>
      {says.value && (
        <p class="small" role="status">
          {says.value}
        </p>
      )}
      <Beside>
        <TemplateFile label="SVG, all pieces" make={() => svgFile(plan, pieces)} onSaid={say} />
        <TemplateFile label="DXF, all pieces" make={() => dxfFile(plan, pieces)} onSaid={say} />
      </Beside>
      <Action onPress={() => print()}>
        Print {count} {count === 1 ? 'sheet' : 'sheets'}
      </Action>
    </>
  );
}

function Template({ doc, plan, pieces }: { doc: string; plan: WalledPlan; pieces: readonly CutPiece[] }) {
  const chosen = useSignal(pieces[0]?.id ?? '');
  const paper = useSignal<Paper>(settings.value.units === 'metric' ? 'a4' : 'letter');
  const piece = pieces.find((p) => p.id === chosen.value) ?? pieces[0];
  if (!piece) return null;
  const tiling = sheetsFor(piece.flat, paper.value);
  const count = tiling.tiles.length;
  return (
    <Screen
      kicker={plan.name}
      title="Templates"
      back={{ to: `/plan/${doc}`, label: 'Plan' }}
      actions={<TemplateActions plan={plan} pieces={pieces} count={count} />}
    >
      <SelectField
        label="Piece"
        value={piece.id}
        options={pieces.map((p) => ({ value: p.id, label: `${p.number}  ${p.name}` }))}
        onChange={(id) => {
          chosen.value = id;
        }}
      />
      <Choice
        label="Paper"
        value={paper.value}
        options={papers}
        onChange={(value) => {
          paper.value = value;
        }}
      />
      <BigFigure figure={String(count)} unit={count === 1 ? 'sheet' : 'sheets'} label="At true size" />
      <TemplateMap outline={piece.flat.outline} tiling={tiling} />
      <p>
        {dimension(piece.length)} by {dimension(piece.width)}. Print at 100 %, never “fit to page”, and
        measure the 100 mm on every sheet before you cut. Lay the crosses of neighbors on each other.
      </p>
      <Caution>
        {turnWords}. Tape wound the other way unwinds the cloth. Curves are within 0.2 mm of the true outline.
      </Caution>
      <TemplateSheets plan={plan} piece={piece} tiling={tiling} paper={paper.value} />
    </Screen>
  );
}

const noPieces = (found: boolean) =>
  found
    ? 'This plan says how much cloth, not which pieces. Draw its wall, and the shapes to cut follow.'
    : 'This plan is not on this phone.';

/** What shape, at true size? */
export function TemplateScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const plan = findDoc('plan', doc)?.body;
  const pieces = plan && hasWall(plan) ? piecesOrProblem(plan) : noPieces(plan !== undefined);
  if (!plan || !hasWall(plan) || typeof pieces === 'string') {
    return (
      <Screen
        {...(plan && { kicker: plan.name })}
        title="No template yet"
        back={{ to: plan ? `/plan/${doc}` : '/plans', label: plan ? 'Plan' : 'Plans' }}
        actions={
          plan && (
            <LinkButton to={`/plan/${doc}/wall`}>
              {hasWall(plan) ? 'Mend its wall' : 'Draw its wall'}
            </LinkButton>
          )
        }
      >
        <p>{typeof pieces === 'string' ? pieces : ''}</p>
      </Screen>
    );
  }
  return <Template doc={doc} plan={plan} pieces={pieces} />;
}
