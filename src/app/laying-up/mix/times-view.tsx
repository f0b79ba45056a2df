import { Action } from '#app/parts/action.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { Choice, QuantityField } from '#app/parts/field.tsx';
import { BigFigure, Figures } from '#app/parts/figure.tsx';
import { useQuantity } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go } from '#app/router.ts';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatClockTime, formatDuration } from '#shared/units/time.ts';
import { ExplainLife } from './cup-life-lines.tsx';
import { type CupPlan, planCups, resinToArea, stirs } from './cup-planner.ts';
import { CupTimeLine } from './cup-time-line.tsx';
import { hardenerWords } from './mix-words.ts';
import { ReadAgain } from './read-again.tsx';
import { useTyped } from './typed-draft.ts';

const paceOver = 600;

/** Common practice, no source. */
const usualPace = {
  metric: 'Usual by hand 5 to 15 g a minute',
  inchPound: 'Usual by hand 0.2 to 0.5 oz a minute',
};

const troubles: Record<NonNullable<CupPlan['trouble']>, { title: string; says: string }> = {
  noCup: {
    title: 'Even the smallest of these cups will run away',
    says: 'Pour each out flat as soon as it is stirred, cool the resin, or take a slower hardener.',
  },
  tooSlow: {
    title: 'A cup goes off before it is on the cloth',
    says: 'Get a second pair of hands, cool the resin and the shop, or take a slower hardener.',
  },
  tapeTooSoon: {
    title: 'The first cup sets before the last is on',
    says: 'The tape would come too late. Get a second pair of hands, take a slower hardener, or make the wall in two rounds.',
  },
};

/** How fast this builder wets cloth out: in grams a minute, or as cloth done in ten minutes. */
function usePace(state: BuildState) {
  const by = useTyped(`${state.header.id}:pace-by`);
  const grams = useTyped(`${state.header.id}:pace-grams`);
  const cloth = useTyped(`${state.header.id}:pace-cloth`);
  const { workingRate } = state.header.goal;
  const mass = useQuantity(
    undefined,
    { quantity: 'massRate', positive: true, max: 0.05, optional: true },
    grams,
  );
  const area = useQuantity(undefined, { quantity: 'area', positive: true, max: 50, optional: true }, cloth);
  const toArea = resinToArea(state);
  const byCloth = by.value === 'cloth' && toArea !== undefined;
  const ofCloth =
    area.si.value === undefined || toArea === undefined ? undefined : (area.si.value * toArea) / paceOver;
  const rate = byCloth ? ofCloth : (mass.si.value ?? (grams.value.trim() === '' ? workingRate : undefined));
  return { by, byCloth, mass, area, rate, planned: workingRate, canBeCloth: toArea !== undefined };
}

function Pace({ pace }: { pace: ReturnType<typeof usePace> }) {
  const { by, byCloth, mass, area, planned, canBeCloth } = pace;
  const hint =
    planned === undefined ? usualPace[settings.value.units] : `The plan has ${show(planned, 'massRate')}`;
  return (
    <>
      {canBeCloth && (
        <Choice
          label="How fast do you wet it out?"
          value={byCloth ? 'cloth' : 'grams'}
          options={[
            { value: 'grams', label: 'By resin' },
            { value: 'cloth', label: 'By cloth' },
          ]}
          onChange={(value) => {
            by.value = value;
          }}
        />
      )}
      {byCloth ? (
        <QuantityField label="Cloth wetted out in 10 minutes" input={area} />
      ) : (
        <QuantityField label="Resin worked in" input={mass} hint={hint} />
      )}
    </>
  );
}

/** '11:24' big, 'PM' small beside it. */
function clockParts(at: number): { figure: string; unit: string } {
  const [figure = '', unit = ''] = formatClockTime(at).split(/\s/);
  return { figure, unit };
}

function Answer({ state, plan }: { state: BuildState; plan: CupPlan }) {
  const { cups, life, rate, shown, tapeBy, trouble } = plan;
  const toCome = cups.filter((c) => c.is === 'toCome');
  const next = toCome[0];
  const { resin } = state.header;
  return (
    <>
      {next ? (
        <BigFigure label="Mix the next cup at" {...clockParts(next.mixAt)} />
      ) : (
        <p>All of it is mixed.</p>
      )}
      <Figures
        items={[
          ...(next
            ? [
                { value: String(toCome.length), label: toCome.length === 1 ? 'cup to come' : 'cups to come' },
                { value: show(next.mass, 'mass'), label: 'in each' },
              ]
            : []),
          ...(tapeBy === undefined ? [] : [{ value: formatClockTime(tapeBy), label: 'tape all on by' }]),
        ]}
      />
      {trouble && (
        <Warning kind="stop" title={troubles[trouble].title}>
          {troubles[trouble].says}
        </Warning>
      )}
      <CupTimeLine cups={cups} tapeBy={tapeBy} />
      {shown && (
        <p>
          At the pace of this tube so far: <strong>{show(rate, 'massRate')}</strong>.
        </p>
      )}
      <Explain
        of="Cups and times"
        formula="3 min + m / rate ≤ life of m"
        values={[
          ['Working rate', show(rate, 'massRate')],
          ['Stirring', formatDuration(stirs)],
          ...(next && life
            ? [
                ['Each cup', show(next.mass, 'mass')] as const,
                ['takes', formatDuration(stirs + next.mass / rate)] as const,
                ['lasts', formatDuration(life.usable)] as const,
              ]
            : []),
        ]}
        source="common practice, no source, for the pace; the life as under Pot life now"
        sure="Fewest even cups that are on the cloth before they are used up and do not run away, mixed one after the other by one pair of hands. Each cup that is emptied corrects the pace."
      />
      {life && <ExplainLife resin={resin} life={life} />}
    </>
  );
}

/** How many cups, how big, and at what time of day each is mixed. */
export function TimesView({ state }: { state: BuildState }) {
  const pace = usePace(state);
  const { header } = state;
  const plan = planCups(state, pace.rate, now.value);
  const back = `/mix/${header.id}/cups`;
  return (
    <Screen
      title="When to mix each cup"
      kicker={`${header.name} no. ${header.number} · ${hardenerWords(header.resin)}`}
      back={{ to: back, label: 'Mix' }}
      actions={<Action onPress={() => go(back)}>To the cups</Action>}
    >
      {plan ? (
        <Answer state={state} plan={plan} />
      ) : (
        <p>Say how fast you work, and the cups and their times follow.</p>
      )}
      {!plan?.shown && <Pace pace={pace} />}
      <ReadAgain state={state} />
    </Screen>
  );
}
