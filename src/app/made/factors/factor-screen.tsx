import { type Factor, type FactorKind, factorKinds } from '#app/made/learned/factors.ts';
import { Action } from '#app/parts/action.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { Figures } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { go, type Params } from '#app/router.ts';
import { countWords, kindWords, shownAs, spreadWords } from './factor-words.ts';
import { Strip } from './strip.tsx';
import { useFactors } from './use-factors.ts';

/** A long list of builds says no more than its newest. */
const mostSources = 40;

function Group({ factor }: { factor: Factor }) {
  const { kind, of, spread, book, sources } = factor;
  return (
    <section class="factor" aria-label={of || 'All builds'}>
      {of && <h2>{of}</h2>}
      <Figures
        items={[
          { value: shownAs(kind, spread.median), label: countWords(factor) },
          ...(book === undefined ? [] : [{ value: shownAs(kind, book), label: 'by the book' }]),
        ]}
      />
      <Strip factor={factor} />
      <p class="quiet">{spreadWords(factor)}</p>
      <Rows label="Where it comes from">
        {sources.slice(0, mostSources).map((s) => (
          <Row key={s.to} to={s.to} title={s.title} value={shownAs(kind, s.value)} />
        ))}
      </Rows>
      {sources.length > mostSources && <p class="quiet">and {sources.length - mostSources} older ones</p>}
    </section>
  );
}

function HowReckoned({ kind, factor }: { kind: FactorKind; factor: Factor }) {
  const { formula, asks, source, title } = kindWords[kind];
  const { count, median, lower, upper, deviation } = factor.spread;
  return (
    <Explain
      of={title}
      formula={formula}
      values={[
        ['Builds', String(count)],
        ['Median', shownAs(kind, median)],
        ['Quartiles', `${shownAs(kind, lower)}, ${shownAs(kind, upper)}`],
        // A spread of temperatures or shares is one as well; its unit is that of the figure.
        ['Median distance from it', shownAs(kind, deviation)],
      ]}
      source={`${source}; median and quartiles after Hyndman and Fan, definition 7`}
      sure={`${asks} From three builds on it can be used; with seven it moves little.`}
    />
  );
}

/** Where does this figure come from? */
export function FactorScreen({ params }: { params: Params }) {
  const factors = useFactors();
  const kind = factorKinds.find((k) => k === params.key);
  const back = { to: '/factors', label: 'What this shop does' };
  if (!factors) return null;
  const own = factors.filter((f) => f.kind === kind);
  const [first] = own;
  if (!kind || !first) {
    return (
      <Screen
        title="No builds say this yet"
        back={back}
        actions={<Action onPress={() => go('/record')}>To the tubes that were made</Action>}
      >
        <p>{kind ? kindWords[kind].asks : 'There is no such figure.'}</p>
      </Screen>
    );
  }
  return (
    <Screen title={kindWords[kind].title} back={back}>
      <p class="quiet">{kindWords[kind].asks}</p>
      {own.map((factor) => (
        <Group key={factor.of} factor={factor} />
      ))}
      <HowReckoned kind={kind} factor={first} />
    </Screen>
  );
}
