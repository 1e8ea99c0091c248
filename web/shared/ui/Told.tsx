import { type ReactNode, useEffect, useRef } from "react";

/** What came of what one just did. It takes the focus: the button that did it is often gone. */
export function Told({ children, className }: { children: ReactNode; className?: string | undefined }) {
  const told = useRef<HTMLParagraphElement>(null);
  useEffect(() => told.current?.focus({ preventScroll: false }), []);
  return (
    <p ref={told} tabIndex={-1} className={className}>
      {children}
    </p>
  );
}
