import { lazy, memo } from "react";
import { LazyPart } from "./LazyPart.tsx";

const Looks = lazy(async () => ({ default: (await import("./LooksSection.tsx")).LooksSection }));
const Rivals = lazy(async () => ({ default: (await import("./RivalsSection.tsx")).RivalsSection }));

/** Beyond what was seen: what to look at next, and the rival stories. */
export const WeighedBeyond = memo(() => (
  <LazyPart what="What to look at next and the rival stories">
    <Looks />
    <Rivals />
  </LazyPart>
));
