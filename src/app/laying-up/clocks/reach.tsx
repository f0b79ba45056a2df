import { Secondary } from '#app/parts/action.tsx';
import { askToNotify, mayNotify } from '#app/platform/notify.ts';
import { meansNow } from './means.ts';
import { lacksOf } from './reach-words.ts';
import './reach.css';

/** What keeps an alarm from reaching the builder, and what to do about it; said where a clock is started or tried out. */
export function Reach() {
  return (
    <>
      <ul class="reach" aria-label="Where an alarm does not reach">
        {lacksOf(meansNow()).map(({ what, todo }) => (
          <li key={what}>
            {what} <b>{todo}</b>
          </li>
        ))}
      </ul>
      {mayNotify.value === 'default' && (
        <Secondary onPress={askToNotify}>Let it notify behind other apps</Secondary>
      )}
    </>
  );
}
