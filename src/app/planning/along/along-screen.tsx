import { type Signal, useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Choice } from '#app/parts/field.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { Assumed, ClothsInTube, PlanningCaution } from '#app/planning/carry/assumed.tsx';
import { stopWords, strengthPath } from '#app/planning/carry/carry-words.ts';
import { planOnShow, shownName } from '#app/planning/carry/plan-on-show.ts';
import { sectionAt, sectionsAlong, stationsOf, tubeMassOf } from '#app/planning/carry/sections-along.ts';
import { type Tube, type TubeStop, tubeOfPlan } from '#app/planning/carry/tube-of-plan.ts';
import { NoPlan } from '#app/planning/wall/no-plan.tsx';
import { PlaceAlong } from '#app/planning/wall/round-section.tsx';
import { hasWall } from '#app/planning/wall/wall-model.ts';
import { go, type Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { HereLines, WholeTube } from './along-figures.tsx';
import { AlongPlot } from './along-plot.tsx';
import { type AlongKey, alongKeys, alongQuantities, besidesWords, keyWords } from './along-quantities.ts';
import '#app/planning/wall/wall.css';
import './along.css';

function Stops({ stops }: { stops: readonly TubeStop[] }) {
  return (
    <>
      {stops.map(stopWords).map(({ title, says, cloth }) => (
        <Fragment key={title}>
          <Warning kind="amber" title={title}>
            {says}
          </Warning>
          {cloth && <LinkButton to={strengthPath(cloth)}>Its stiffness and strength</LinkButton>}
        </Fragment>
      ))}
    </>
  );
}

/** Where it is stiffest: there a builder looks first. */
function stiffest(tube: Tube): number {
  const sections = sectionsAlong(tube);
  return sections.reduce((a, b) => (b.section.eiLeast > a.section.eiLeast * (1 + 1e-9) ? b : a)).at;
}

function AskOf({ of }: { of: AlongKey }) {
  if (of === 'squeezed') return <Ask term="ring-softness" asks="What is it to give when squeezed?" />;
  if (of === 'wall') return <Ask term="wall" asks="What is the wall?" />;
  if (of === 'weight' || of === 'area') return null;
  return <Ask term="bending-stiffness" asks="What are EI and GJ?" />;
}

function Along({ tube, of: key }: { tube: Tube; of: AlongKey }) {
  const chosen = useSignal<number | undefined>(undefined);
  const sections = sectionsAlong(tube);
  const here = sectionAt(tube, Math.min(chosen.value ?? stiffest(tube), tube.length));
  const of = alongQuantities(sections)[key];
  const value = of.least(here.section);
  const { figure, unit } = value === undefined ? { figure: '–', unit: '' } : of.split(value);
  const pick = (at: number) => {
    chosen.value = at;
  };
  return (
    <>
      <div class="along-figure">
        <div class="ask-head">
          <p class="along-label">
            {of.name}, at {show(here.at, 'length', 0)}
          </p>
          <AskOf of={key} />
        </div>
        <BigFigure figure={figure} unit={unit} />
        <p>{besidesWords(key, here.section, { sections, mass: tubeMassOf(tube) })}</p>
      </div>
      <AlongPlot
        sections={sections}
        stations={stationsOf(tube)}
        of={of}
        unit={unit}
        here={here}
        length={tube.length}
        onPick={pick}
      />
      {of.shaded && <p class="picture-words">{of.shaded}</p>}
      <PlaceAlong length={tube.length} at={here.at} onSet={pick} />
      <HereLines tube={tube} here={here} />
      <WholeTube tube={tube} />
      <ClothsInTube tube={tube} />
      <Assumed tube={tube} />
    </>
  );
}

function Keys({ of }: { of: Signal<AlongKey> }) {
  return (
    <div class="along-keys">
      <Choice
        label="What is drawn"
        value={of.value}
        options={alongKeys.map((value) => ({ value, label: keyWords[value] }))}
        onChange={(key) => {
          of.value = key;
        }}
      />
    </div>
  );
}

/** How stiff is it, how heavy, and how thick, from end to end? */
export function AlongScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const key = useSignal<AlongKey>('bending');
  const kept = findDoc('plan', doc)?.body;
  if (!kept) return <NoPlan />;
  const shown = planOnShow(doc, kept);
  const { plan } = shown;
  const found = tubeOfPlan(plan);
  return (
    <Screen
      kicker={shownName(shown)}
      title="Along the tube"
      back={{ to: `/plan/${doc}`, label: 'Plan' }}
      actions={
        plan.loads ? (
          <Action onPress={() => go(`/plan/${doc}/loads/margins`)}>See what it bears</Action>
        ) : (
          <Action onPress={() => go(`/plan/${doc}/loads`)}>Say what it has to bear</Action>
        )
      }
    >
      {found.ok && <Keys of={key} />}
      {found.ok ? <Along tube={found.tube} of={key.value} /> : <Stops stops={found.stops} />}
      <LinkButton to={`/plan/${doc}/wall`}>{hasWall(plan) ? 'Change its wall' : 'Draw its wall'}</LinkButton>
      <PlanningCaution />
    </Screen>
  );
}
