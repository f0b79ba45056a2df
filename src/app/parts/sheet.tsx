import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { NotSaved } from './not-saved.tsx';
import './sheet.css';

interface Props {
  title: string;
  onClose: () => void;
  children: ComponentChildren;
  actions?: ComponentChildren;
}

/** A question in front of the screen. It takes the focus and gives it back; Escape closes it. */
export function Sheet({ title, onClose, children, actions }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      class="sheet"
      ref={dialog}
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <h2>{title}</h2>
      <div class="sheet-body">
        <NotSaved />
        {children}
      </div>
      {actions && <div class="sheet-actions">{actions}</div>}
    </dialog>
  );
}
