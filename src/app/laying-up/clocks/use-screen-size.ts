import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

const sizeNow = () => ({ width: innerWidth, height: innerHeight });

/** The size of the screen, also after it is turned. */
export function useScreenSize(): Signal<{ width: number; height: number }> {
  const size = useSignal(sizeNow());
  useEffect(() => {
    const turned = () => {
      size.value = sizeNow();
    };
    addEventListener('resize', turned);
    return () => removeEventListener('resize', turned);
  }, [size]);
  return size;
}
