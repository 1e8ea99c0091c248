import { type ReactNode, Suspense, startTransition, useEffect, useState } from "react";
import { isFirstPage } from "../navigation/arrival.ts";

interface Props {
  /** Stands there until the children are read. */
  until: ReactNode;
  children: ReactNode;
}

/**
 * What is read while the first page of a visit stands already. The children come by a transition and take the place of
 * what waits for them as soon as they are read; React keeps a fallback that it has shown for 0.3 s. After a navigation the
 * page that is left stays until all of the next is there, so nothing waits here.
 */
export function Arriving({ until, children }: Props) {
  const [isStaged] = useState(isFirstPage);
  const [isBegun, setBegun] = useState(!isStaged);
  useEffect(() => startTransition(() => setBegun(true)), []);
  return isStaged ? <Suspense fallback={until}>{isBegun ? children : until}</Suspense> : children;
}
