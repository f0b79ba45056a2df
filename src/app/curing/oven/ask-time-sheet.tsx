import { Action, Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { now } from '#app/state/now.ts';
import { formatClockTime } from '#shared/units/time.ts';
import type { Logging } from './logging.ts';

interface Props {
  logging: Logging;
  /** Choose another time. */
  onTime: () => void;
  onLogged: () => void;
}

/** A reading out of its order is not wrong, but it is asked about once. */
export function AskTimeSheet({ logging, onTime, onLogged }: Props) {
  const { asks, last, log, at } = logging;
  if (!asks.value) return null;
  const { reading, at: when, why } = asks.value;
  const close = () => {
    asks.value = undefined;
  };
  const changeTime = () => {
    close();
    onTime();
  };
  const logAs = async (time: number | undefined) => {
    at.value = time;
    if (await log(reading, true)) onLogged();
  };
  const earlier = why === 'earlier' && last !== undefined;
  return (
    <Sheet
      title={
        earlier
          ? `The last reading was ${formatClockTime(last)}: is this one earlier?`
          : `${formatClockTime(when)} is still to come`
      }
      onClose={close}
      actions={
        <>
          <Secondary onPress={changeTime}>Change the time</Secondary>
          {earlier ? (
            <Action onPress={() => logAs(when)}>Log it as earlier</Action>
          ) : (
            <Action onPress={() => logAs(undefined)}>Log it as read now</Action>
          )}
        </>
      }
    >
      <p>
        {earlier
          ? `${reading.typed} would stand at ${formatClockTime(when)}, before it.`
          : `It is ${formatClockTime(now.value)} now: nothing can be read before its time.`}
      </p>
    </Sheet>
  );
}
