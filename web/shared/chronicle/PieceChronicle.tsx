import { useState } from "react";
import { Disclosure } from "../ui/Disclosure.tsx";
import { FollowButton } from "./FollowButton.tsx";
import { SignedReports } from "./SignedReports.tsx";

/** What is kept of a piece over time; read when it is unfolded. */
export function PieceChronicle({ examination }: { examination: string }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <FollowButton about={examination} name="this piece" />
      <Disclosure level={2} summary="Signed reports" isOpen={isOpen} onOpenChange={setOpen}>
        {isOpen ? <SignedReports examination={examination} /> : null}
      </Disclosure>
    </>
  );
}
