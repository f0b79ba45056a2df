import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Secondary } from '#app/parts/action.tsx';
import { lengthOf, play, unlockSound } from '#app/platform/sound.ts';
import { canSpeak, speak } from '#app/platform/speak.ts';
import { vibrate } from '#app/platform/vibrate.ts';
import { settings } from '#app/state/settings.ts';
import type { AlarmLevel } from './alarm-plan.ts';
import { alarmLevels, alarmSignals } from './alarm-signals.ts';
import './test-alarm.css';

/** Between one alarm and the next, so that they are told apart, s */
const pause = 1.1;

interface Tried {
  now: AlarmLevel | undefined;
  heard: 'ringing' | 'rang' | 'silent';
}

/** Plays all three with their names, one after the other; the tap itself unlocks the sound. */
function useTrial() {
  const tried = useSignal<Tried | undefined>(undefined);
  const timers = useRef<ReturnType<typeof setTimeout>[]>([]);
  const stop = () => {
    for (const timer of timers.current) clearTimeout(timer);
    timers.current = [];
  };
  useEffect(() => stop, []);
  const ring = (level: AlarmLevel) => {
    const { name, beeps, shakes } = alarmSignals[level];
    play(beeps);
    vibrate(shakes);
    const says = settings.value.speech && canSpeak.value;
    if (says) timers.current.push(setTimeout(() => speak(name), 1000 * lengthOf(beeps)));
    tried.value = { now: level, heard: tried.value?.heard ?? 'ringing' };
  };
  const start = async () => {
    stop();
    tried.value = { now: undefined, heard: 'ringing' };
    const audible = await unlockSound();
    if (!audible) tried.value = { now: undefined, heard: 'silent' };
    let at = 0;
    for (const level of alarmLevels) {
      timers.current.push(setTimeout(() => ring(level), 1000 * at));
      at += lengthOf(alarmSignals[level].beeps) + pause;
    }
    timers.current.push(
      setTimeout(() => {
        tried.value = { now: undefined, heard: audible ? 'rang' : 'silent' };
      }, 1000 * at),
    );
  };
  return { tried, start };
}

const outcome: Record<Tried['heard'], string> = {
  ringing: 'Listen from where you work.',
  rang: 'Not heard? Turn the media volume up, the silent switch off and Bluetooth off: it may play to headphones or a speaker elsewhere.',
  silent: 'This browser made no sound: clocks flash, and buzz where the phone can.',
};

/** Tries out on this phone what a clock does as it comes due. */
export function TestAlarm() {
  const { tried, start } = useTrial();
  const { value } = tried;
  return (
    <>
      <Secondary onPress={start}>Test the alarm</Secondary>
      {value && (
        <div class="test-alarm" role="status">
          <ul>
            {alarmLevels.map((level) => (
              <li key={level} data-now={level === value.now}>
                <b>
                  {level === value.now ? '▶ ' : ''}
                  {alarmSignals[level].name}
                </b>
                : {alarmSignals[level].like}
              </li>
            ))}
          </ul>
          <p>
            {outcome[value.heard]}
            {!settings.value.sound && ' Sound of clocks is off: when one is due, none of this is heard.'}
          </p>
        </div>
      )}
    </>
  );
}
