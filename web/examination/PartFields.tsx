import { memo, useState } from "react";
import type { Part } from "#server/domain/examination.ts";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { PartForm } from "./PartForm.tsx";

/** The name, kind and place of a part, and the way to take it out; made when it is unfolded. */
export const PartFields = memo(function PartFields({ part }: { part: Part }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <Disclosure summary={`Name and kind of ${part.label}`} level={3} isOpen={isOpen} onOpenChange={setIsOpen}>
      {isOpen ? <PartForm part={part} /> : null}
    </Disclosure>
  );
});
