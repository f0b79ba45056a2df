import { LinkButton } from '#app/parts/action.tsx';
import { callingClocks } from './calling.ts';
import { runningClocks } from './running.ts';

/** The twin of the strip at the top, in reach of a thumb; absent while no clock runs. */
export function ClocksTwin() {
  if (runningClocks.value.length === 0) return null;
  const calling = callingClocks.value[0];
  return <LinkButton to="/clocks">{calling ? `Answer ${calling.name}` : 'Clocks'}</LinkButton>;
}
