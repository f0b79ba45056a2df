/**
 * Runs the stages in order, shows what failed in full, and ends with the count as the last line.
 * @param {import('./stages.mjs').Stage[]} stages
 */
export async function runStages(stages) {
  let passed = 0;
  let failed = 0;
  /** @type {Set<string>} */
  const broken = new Set();
  for (const stage of stages) {
    if (stage.needs && broken.has(stage.needs)) {
      failed += 1;
      console.log(`✗ ${stage.name}: not run, because the ${stage.needs} failed`);
      continue;
    }
    const startedMs = Date.now();
    const result = await stage.run();
    passed += result.passed;
    failed += result.failed;
    report(stage.name, result, Date.now() - startedMs);
    if (result.failed > 0) broken.add(stage.name);
  }
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}

/**
 * @param {string} name
 * @param {import('./stages.mjs').Result} result
 * @param {number} tookMs
 */
function report(name, { passed, failed, skipped = 0, note, output }, tookMs) {
  const counts = [`${passed} passed`];
  if (failed > 0) counts.push(`${failed} failed`);
  if (skipped > 0) counts.push(`${skipped} skipped`);
  const words = passed + failed + skipped === 0 ? 'no tests yet' : counts.join(', ');
  console.log(`${failed > 0 ? '✗' : '✓'} ${name}: ${words} (${(tookMs / 1000).toFixed(1)} s)`);
  if (note) console.log(`  ${note}`);
  if (failed > 0) console.log(`\n${output.trim()}\n`);
}
