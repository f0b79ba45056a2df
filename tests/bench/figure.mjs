// Figures for the table at the end of npm run bench: scripts/bench.mjs gathers these lines from every benchmark.
/**
 * @param {string} what
 * @param {string} value
 * @param {string} [goal]
 */
export const figure = (what, value, goal = '') => console.log(`| ${what} | ${value} | ${goal}`);

/**
 * The value that a share of all lies under.
 * @param {readonly number[]} values
 * @param {number} share
 */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** @param {readonly number[]} values */
export const median = (values) => quantile(values, 0.5);

/** Everything, with the long runs that take hours on a small machine. */
export const wholeRun = process.env.BENCH_ALL === '1';
