import { effect, type Signal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';

const prefix = 'tubewright-typed:';

function read(key: string): string {
  try {
    return sessionStorage.getItem(prefix + key) ?? '';
  } catch {
    return '';
  }
}

function keep(key: string, text: string): void {
  try {
    if (text === '') sessionStorage.removeItem(prefix + key);
    else sessionStorage.setItem(prefix + key, text);
  } catch {
    // Without sessionStorage a reload loses what is half typed, and nothing else.
  }
}

/** What is being typed, by what it is typed for: a reload in the middle of a pour must not lose it. */
export function useTyped(key: string): Signal<string> {
  const text = useMemo(() => signal(read(key)), [key]);
  useEffect(() => effect(() => keep(key, text.value)), [key, text]);
  return text;
}
