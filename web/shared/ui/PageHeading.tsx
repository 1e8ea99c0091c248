import { type ReactNode, useLayoutEffect, useRef } from "react";
import { takeArrival } from "../navigation/arrival.ts";

interface Props {
  /** What the browser's tab says before "Scribeline". */
  title: string;
  children: ReactNode;
  className?: string;
}

/** The one `h1` of a page: names the document, and takes the focus after a navigation; both as soon as it stands. */
export function PageHeading({ title, children, className }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    document.title = `${title} · Scribeline`;
  }, [title]);
  useLayoutEffect(() => {
    if (takeArrival()) heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1} className={className}>
      {children}
    </h1>
  );
}
