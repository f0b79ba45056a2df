import { flashTone } from './alarms.ts';
import './alarm-flash.css';

/** The whole screen flashes, slowly, while a clock waits for an answer. */
export function AlarmFlash() {
  const tone = flashTone.value;
  return tone ? <div class={`alarm-flash alarm-flash-${tone}`} aria-hidden="true" /> : null;
}
