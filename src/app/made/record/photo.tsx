import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { theStore } from '#app/state/shop.ts';

/** A picture kept on this phone, by the hash of its bytes. */
export function Photo({ hash, alt }: { hash: string; alt: string }) {
  const address = useSignal<string | 'none' | undefined>(undefined);
  useEffect(() => {
    let made: string | undefined;
    let current = true;
    theStore()
      .photo(hash)
      .then((blob) => {
        if (!current) return;
        made = blob && URL.createObjectURL(blob);
        address.value = made ?? 'none';
      });
    return () => {
      current = false;
      if (made) URL.revokeObjectURL(made);
    };
  }, [hash, address]);
  if (address.value === undefined) return null;
  if (address.value === 'none') return <p class="quiet">This photo is not on this phone.</p>;
  return <img src={address.value} alt={alt} />;
}
