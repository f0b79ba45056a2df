import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show, showSplit } from '#app/state/show.ts';
import type { WantedInput } from '#calc';
import { isKept, Steps } from './steps.tsx';
import type { Kept, Taking } from './use-taking.ts';
import { WantedPicture } from './wanted-picture.tsx';
import { plyWords, ruleWords, todayWords } from './wanted-words.ts';
import type { Wanted } from './wanted-worker.ts';

/** What is not met with the most plies, and where. */
function NotMet({ wanted, input }: { wanted: Wanted; input: WantedInput }) {
  if (wanted.met) return null;
  const failing = wanted.stations.filter(({ margin }) => margin < 0);
  const worst = failing.reduce<(typeof failing)[number] | undefined>(
    (a, b) => (a && a.margin <= b.margin ? a : b),
    undefined,
  );
  const limit = input.deflectionLimit;
  const tooFar = limit !== undefined && wanted.deflection > limit;
  const why = worst
    ? `${ruleWords(worst.check)} at ${show(worst.at, 'length', 0)}`
    : tooFar
      ? `it goes ${show(wanted.deflection, 'length', 0)} aside, ${show(limit, 'length', 0)} may be`
      : ruleWords('column buckling');
  return (
    <Warning kind="stop" title={`Not met with ${plyWords(input.most)}`}>
      What fails: {why}. Allow more plies, take a bigger mandrel or a stiffer cloth, or ask less of it.
    </Warning>
  );
}

function Saves({ taking: { masses, most } }: { taking: Taking }) {
  const { taken, constant, today } = masses;
  if (taken === undefined || constant === undefined) {
    return <p class="quiet">What it weighs is not known: a density is missing.</p>;
  }
  const throughout = `${todayWords(most)} plies throughout`;
  const { figure, unit } = showSplit(constant - taken, 'mass', 0);
  return (
    <>
      <BigFigure
        label={`Saves against ${throughout}`}
        figure={figure}
        unit={`${unit}, ${show((constant - taken) / constant, 'fraction', 0)}`}
      />
      <Lines
        head={['Tube', 'weighs']}
        rows={[
          ['with these plies, as cut', show(taken, 'mass', 0)],
          [`with ${throughout}`, show(constant, 'mass', 0)],
          ...(today === undefined ? [] : [['with today’s wall', show(today, 'mass', 0)]]),
        ]}
      />
    </>
  );
}

interface Props {
  length: number;
  input: WantedInput;
  taking: Taking;
  kept: Kept;
}

/** The fewest plies as a picture, in weight, and step by step. */
export function Found({ length, input, taking, kept }: Props) {
  const { wanted, stretches, today, stations } = taking;
  return (
    <>
      <NotMet wanted={wanted} input={input} />
      <WantedPicture
        length={length}
        stretches={stretches}
        cut={stations}
        today={stations.map(({ at }, i) => ({ at, value: today[i] ?? 0 }))}
        kept={(stretch) => isKept(kept.value, stretch)}
      />
      {wanted.met && <Saves taking={taking} />}
      {wanted.met && <Steps stretches={stretches} today={today} kept={kept} />}
      {taking.later && (
        <p class="quiet">
          The free edge is cut straight from station to station. Where a step alone would leave too little
          between two of them, its ply ends one station later: the blue line.
        </p>
      )}
    </>
  );
}
