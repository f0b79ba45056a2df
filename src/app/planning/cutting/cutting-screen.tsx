import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { hasWall, type WalledPlan } from '#app/planning/wall/wall-model.ts';
import type { Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { clothGroups, sheetPieces } from './cloth-groups.ts';
import { ClothSection } from './cloth-section.tsx';
import { type CutPiece, piecesOrProblem } from './cut-pieces.ts';
import { type CuttingDraft, cuttingDraft } from './cutting-draft.ts';
import { dimension } from './dimensions.ts';
import './cutting.css';

function Sheets({ pieces }: { pieces: readonly CutPiece[] }) {
  if (pieces.length === 0) return null;
  return (
    <>
      <h2>Core and film</h2>
      <Lines
        head={['', 'long', 'wide']}
        rows={pieces.map((p) => [`${p.number}  ${p.name}`, dimension(p.length), dimension(p.width)])}
      />
    </>
  );
}

function Cutting({
  plan,
  pieces,
  draft,
}: {
  plan: WalledPlan;
  pieces: readonly CutPiece[];
  draft: CuttingDraft;
}) {
  return (
    <>
      <div class="field-pair">
        <QuantityField label="Tubes at once" input={draft.tubes} />
        <QuantityField
          label="Masking around"
          ask={<Ask term="masking" asks="What is masking?" />}
          input={draft.mask}
          hint="On each side of a piece"
        />
      </div>
      {clothGroups(plan, pieces).map((group) => (
        <ClothSection key={group.doc} group={group} draft={draft} />
      ))}
      <Sheets pieces={sheetPieces(pieces)} />
      <details class="more">
        <summary>Selvage</summary>
        <QuantityField
          label="Selvage left over"
          ask={<Ask term="selvage" asks="What is selvage?" />}
          input={draft.selvage}
          hint="On each side of the roll"
        />
      </details>
      <Caution>
        Mark, measure once more, then cut down the middle of the masking. Warp runs along the roll on every
        piece.
      </Caution>
    </>
  );
}

/** How much cloth, and where on it? */
export function CuttingScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const plan = findDoc('plan', doc)?.body;
  const back = { to: plan ? `/plan/${doc}` : '/plans', label: plan ? 'Plan' : 'Plans' };
  if (!plan || !hasWall(plan)) {
    return (
      <Screen
        {...(plan && { kicker: plan.name })}
        title="Nothing to cut yet"
        back={back}
        actions={plan && <LinkButton to={`/plan/${doc}/wall`}>Draw its wall</LinkButton>}
      >
        <p>
          {plan
            ? 'This plan says how much cloth, not which pieces. Draw its wall, and the shapes to cut follow.'
            : 'This plan is not on this phone.'}
        </p>
      </Screen>
    );
  }
  const pieces = piecesOrProblem(plan);
  return (
    <Screen
      kicker={plan.name}
      title="Cutting"
      back={back}
      actions={
        <Beside>
          <LinkButton to={`/plan/${doc}/template`}>Templates</LinkButton>
          <Secondary onPress={() => print()}>Print this</Secondary>
        </Beside>
      }
    >
      {typeof pieces === 'string' ? (
        <Warning kind="amber" title={pieces} />
      ) : (
        <Cutting plan={plan} pieces={pieces} draft={cuttingDraft(doc)} />
      )}
    </Screen>
  );
}
