import { Action } from '#app/parts/action.tsx';
import { HomeScreenFirst } from '#app/parts/home-screen-first.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { LoadDemo } from '#app/phone/data/load-demo.tsx';
import { go } from '#app/router.ts';
import { ReadyWords } from './ready-line.tsx';
import './bench.css';

/** Nothing was ever made here: what this is, and the way in. */
export function Welcome() {
  return (
    <Screen
      kicker="Tubewright"
      title="Your bench is clear"
      actions={
        <>
          <LoadDemo />
          <Action onPress={() => go('/start')}>Start the first tube</Action>
        </>
      }
    >
      <p class="welcome">
        For laying up light tubes by hand: how much resin to mix, how long it can be used, each step in order,
        the cure, and what the tube weighs.
      </p>
      <p>Everything you write down stays on this phone.</p>
      <ReadyWords />
      <HomeScreenFirst />
      <Caution>
        A tube that carries people is for licensed practice and local rules to approve. No app does that.
      </Caution>
    </Screen>
  );
}
