import { WriteError } from './store.ts';

/** An error and what it was caused by: a full disk may hide inside an AbortError. */
function* chain(error: unknown): Generator<{ name: string; message: string }> {
  let link = error;
  for (let depth = 0; depth < 5 && typeof link === 'object' && link !== null; depth++) {
    const { name, message, cause, inner } = link as Record<string, unknown>;
    yield { name: String(name), message: String(message) };
    link = cause ?? inner;
  }
}

/** Why a write failed. Told by name: the class QuotaExceededError is missing in older browsers. */
export function asWriteError(error: unknown): WriteError {
  if (error instanceof WriteError) return error;
  const names = Array.from(chain(error), (link) => link.name);
  if (names.includes('QuotaExceededError')) return new WriteError('full', { cause: error });
  if (names.includes('ConstraintError') || names.includes('DataCloneError') || names.includes('DataError')) {
    return new WriteError('refused', { cause: error });
  }
  if (names.includes('VersionError')) return new WriteError('newerVersion', { cause: error });
  return new WriteError(connectionWasLost(error) ? 'closed' : 'failed', { cause: error });
}

/** iOS cuts the connection of a page in the background; the page lives on and finds out at its next request. */
export function connectionWasLost(error: unknown): boolean {
  for (const { name, message } of chain(error)) {
    if (name === 'InvalidStateError') return true;
    if (/connection.*(lost|clos)|clos.*connection/i.test(message)) return true;
  }
  return false;
}
