import type { ComponentProps } from "react";
import { useKeptState } from "../navigation/use-kept-state.ts";
import { Disclosure } from "./Disclosure.tsx";

interface Props extends Omit<ComponentProps<typeof Disclosure>, "isOpen" | "onOpenChange"> {
  /** Its own on the page. */
  name: string;
}

/** A line that unfolds, and is as it was left for who comes back to the page. */
export function KeptDisclosure({ name, isOpenAtFirst = false, ...rest }: Props) {
  const [isOpen, setOpen] = useKeptState(`unfolded ${name}`, isOpenAtFirst);
  return <Disclosure {...rest} isOpen={isOpen} onOpenChange={(open) => setOpen(() => open)} />;
}
