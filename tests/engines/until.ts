/** Asks again until it is so; says what did not come, and what went wrong at the last try. */
export async function until(what: string, isSo: () => Promise<unknown>, patience = 20_000): Promise<void> {
  const end = Date.now() + patience;
  let why = '';
  for (;;) {
    try {
      if (await isSo()) return;
      why = '';
    } catch (error) {
      why = `; ${error instanceof Error ? error.message : error}`;
    }
    if (Date.now() > end) throw new Error(`${what}: not within ${patience / 1000} s${why}`);
    await new Promise((again) => setTimeout(again, 50));
  }
}
