import { signal } from '@preact/signals';
import { openBuilds } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';

/** Whether any tube was ever started here; read at the opening, unknown before. */
export const everBuilt = signal<boolean | undefined>(undefined);

export async function askWhetherEverBuilt(): Promise<void> {
  if (everBuilt.value || openBuilds.value.length > 0) {
    everBuilt.value = true;
    return;
  }
  const { summaries } = await theStore().summaries({ of: 'build', limit: 1 });
  everBuilt.value = summaries.length > 0;
}
