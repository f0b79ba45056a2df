import { LimitWarnings } from '#app/curing/cure/limit-warnings.tsx';
import { tapeSays } from '#app/curing/cure/tape-words.ts';
import { LinkButton } from '#app/parts/action.tsx';
import { Figures, Lines } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { PlanCost } from '#app/planning/ledger/cost-line.tsx';
import { GaveWayBefore } from '#app/planning/loads/gave-way-before.tsx';
import { PlanLoads } from '#app/planning/loads/plan-loads.tsx';
import { PlanWall } from '#app/planning/wall/plan-wall.tsx';
import { mandrelLine } from '#app/planning/wall/wall-lines.ts';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { resinWords } from '#app/state/resin-words.ts';
import { show } from '#app/state/show.ts';
import type { Learnable, Plan } from '#shared/record/plan.ts';
import { formatRatio } from '#shared/units/ratio.ts';
import { planCautions } from './plan-cautions.ts';
import { estimatePlan, type PlanEstimate, type PlanMaterials } from './plan-estimate.ts';
import { planLimits } from './plan-limits.ts';
import { ScheduleLine } from './schedule-line.tsx';

/** Of a plan that only says how much cloth. */
function PlainFigures({ estimate }: { estimate: PlanEstimate }) {
  const { recipe } = estimate;
  return (
    <Figures
      items={[
        { value: show(estimate.cloth, 'mass', 0), label: 'cloth' },
        { value: show(estimate.kept, 'mass', 0), label: 'resin in it' },
        { value: show(estimate.tube, 'mass', 0), label: 'tube' },
        {
          value: recipe ? show(recipe.total, 'mass', 0) : '–',
          label: recipe ? `to mix, ${recipe.cups} ${recipe.cups === 1 ? 'cup' : 'cups'}` : 'to mix',
        },
      ]}
    />
  );
}

/** ', the shop's (7 builds)' */
function whose({ goal }: Plan, figure: Learnable): string {
  const from = goal.from?.[figure];
  if (!from) return '';
  if (from.of === 'book') return ', the book’s';
  return `, the shop’s (${from.builds} ${from.builds === 1 ? 'build' : 'builds'})`;
}

function Facts({ plan, estimate }: { plan: Plan; estimate: PlanEstimate }) {
  const plies = show(plan.plies, 'number', 2).replace(/\.?0+$/, '');
  return (
    <Lines
      rows={[
        ['Mandrel', hasWall(plan) ? mandrelLine(plan) : show(plan.mandrelDiameter, 'diameter')],
        ['Tube', show(plan.tubeLength, 'length', 0)],
        ...(hasWall(plan) ? [] : [['Wall', `${plies} plies, ${show(estimate.wall, 'thickness')}`]]),
        ['A ply', show(estimate.plyThickness, 'thickness') + whose(plan, 'plyThickness')],
        ['Resin to fabric', formatRatio(estimate.resinShare)],
        ['Fiber volume', show(plan.goal.fiberVolumeFraction, 'fraction', 0) + whose(plan, 'fiberVolume')],
        ['Lost in each cup', show(plan.goal.lossPerCup, 'mass') + whose(plan, 'lossPerCup')],
        ['Squeezed out', show(plan.goal.squeezeOut, 'fraction') + whose(plan, 'squeezeOut')],
        ...(plan.goal.workingRate === undefined
          ? []
          : [['Working rate', show(plan.goal.workingRate, 'massRate') + whose(plan, 'workingRate')]]),
        ['Hottest in service', show(plan.serviceTemperature, 'temperature', 0)],
      ]}
    />
  );
}

function AlongIt({ doc }: { doc: string }) {
  return (
    <Rows label="From end to end">
      <Row
        to={`/plan/${doc}/along`}
        title="Along the tube"
        about="How stiff and how heavy, from end to end"
      />
    </Rows>
  );
}

function ClothWork({ doc }: { doc: string }) {
  return (
    <Rows label="Its cloth">
      <Row to={`/plan/${doc}/cutting`} title="Cutting" about="Pieces on the roll, cloth needed" />
      <Row
        to={`/plan/${doc}/template`}
        title="Templates"
        about="True size on paper, or a file for a cutter"
      />
    </Rows>
  );
}

function TapeWork({ doc }: { doc: string }) {
  return (
    <Rows label="Its tape">
      <Row to={`/plan/${doc}/tape`} title="Tape" about="How much it takes, how hard it squeezes" />
    </Rows>
  );
}

/** What a plan comes to: wall, weights, cure, materials. */
export function PlanBody({ doc, plan, materials }: { doc: string; plan: Plan; materials: PlanMaterials }) {
  const estimate = estimatePlan(plan, materials);
  const { cloth, resin, release, tape } = materials;
  const limits = planLimits(plan, materials);
  return (
    <>
      <GaveWayBefore doc={doc} />
      {hasWall(plan) ? <PlanWall plan={plan} doc={doc} /> : <PlainFigures estimate={estimate} />}
      {planCautions(plan, materials).map((c) => (
        <Warning key={c.title} kind="amber" title={c.title}>
          {c.says}
        </Warning>
      ))}
      <AlongIt doc={doc} />
      <PlanLoads doc={doc} plan={plan} />
      {plan.wall && <ClothWork doc={doc} />}
      <TapeWork doc={doc} />
      <h2>Cure</h2>
      <ScheduleLine schedule={plan.schedule} limits={limits} />
      <LimitWarnings schedule={plan.schedule} limits={limits} resins={[resin]} />
      {tape && <p>{tapeSays(plan.schedule, tape)}</p>}
      <LinkButton to={`/plan/${doc}/cure`}>Change its cure</LinkButton>
      <Facts plan={plan} estimate={estimate} />
      <Lines
        rows={[
          [plan.wall ? 'Most of its cloth' : 'Cloth', cloth.name],
          ['Resin', resinWords(resin)],
          ...(release ? [['Release', release.name]] : []),
          ...(tape ? [['Tape', tape.name]] : []),
        ]}
      />
      <PlanCost doc={doc} />
      {plan.note && <p>{plan.note}</p>}
      <Rows label="What came of it">
        <Row
          to={`/compare/choose/${doc}`}
          title="Compare its builds"
          about="What differs between them, and what they say"
        />
      </Rows>
      <Rows label="Hand it on">
        <Row
          to={`/hand/plan/${doc}`}
          title="To another phone"
          about="As a file, or as codes for its camera"
        />
      </Rows>
      <Caution>
        The wall is your choice. What it holds is estimated only under loads you say, in ‘Loads and margins’.
        What carries people needs tests, local rules and licensed review.
      </Caution>
    </>
  );
}
