import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { demoChosen } from '#app/state/chosen-shop.ts';
import { shop } from '#app/state/shop.ts';

const reasons = {
  newerVersion: {
    title: 'A newer version wrote this record',
    text: 'This page is older than the record on this phone. It has not touched it. Load the page again while online to get the newer version.',
  },
  blocked: {
    title: 'Another tab is holding the record',
    text: 'Close every other tab of this app, then open it again. Nothing is lost.',
  },
  unavailable: {
    title: 'This browser keeps nothing here',
    text: 'Private windows and blocked storage keep no record. Open the app in an ordinary window, or allow this site to store data.',
  },
  full: {
    title: 'This phone has no room left',
    text: 'The record is on this phone, and nothing of it was touched, but it opens only where there is some room. Free some space, then open it again.',
  },
  unreadable: {
    title: 'The record could not be opened just now',
    text: 'It is on this phone, and nothing of it was touched. The phone may have no room left, or be busy: free some space, close the app and its other tabs, then open it again.',
  },
  lost: {
    title: 'The record went to another tab',
    text: 'A newer version of the app took it over in another tab, or it was removed there. Open it again to go on.',
  },
} as const;

const leaveDemo = () => import('#app/phone/data/demo.ts').then((m) => m.leaveDemo());

/** The shop could not be opened: why, and the way out. */
export function CannotOpen() {
  const state = shop.value;
  // Fetched when it is wanted: nearly no start gets here.
  const hold = useSignal<typeof import('#app/parts/hold-action.tsx') | undefined>(undefined);
  useEffect(() => {
    if (demoChosen()) import('#app/parts/hold-action.tsx').then((m) => (hold.value = m));
  }, [hold]);
  const HoldAction = hold.value?.HoldAction;
  const { title, text } = reasons[state.phase === 'failed' ? state.reason : 'lost'];
  return (
    <Screen
      title={title}
      actions={
        <>
          {HoldAction && <HoldAction onHeld={leaveDemo}>Hold to leave the demo shop</HoldAction>}
          <Action onPress={() => location.reload()}>Open it again</Action>
        </>
      }
    >
      <p>{text}</p>
      {state.phase === 'failed' && <p class="small quiet">{state.detail}</p>}
    </Screen>
  );
}
