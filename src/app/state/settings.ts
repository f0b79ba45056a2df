import { effect, signal } from '@preact/signals';
import * as z from 'zod/mini';
import { defaultSettings, type Settings, settings as schema } from '#shared/record/settings.ts';
import { theStore } from './shop.ts';

export const settingsKey = 'settings';

/** How this phone is set up. */
export const settings = signal<Settings>(defaultSettings);

export function takeSettings(raw: unknown): void {
  const kept = z.safeParse(schema, raw);
  settings.value = kept.success ? (kept.data as Settings) : defaultSettings;
}

export async function changeSettings(change: Partial<Settings>): Promise<void> {
  settings.value = { ...settings.value, ...change };
  await theStore().setPhoneValue(settingsKey, settings.value);
}

/** Shows the theme on the whole page; 'system' follows the phone, also while the app is open. */
export function followTheme(): void {
  const phone = matchMedia('(prefers-color-scheme: dark)');
  const phoneIsDark = signal(phone.matches);
  phone.addEventListener('change', () => {
    phoneIsDark.value = phone.matches;
  });
  effect(() => {
    const { theme } = settings.value;
    const followed = phoneIsDark.value ? 'dark' : 'light';
    document.documentElement.dataset.theme = theme === 'system' ? followed : theme;
  });
}
