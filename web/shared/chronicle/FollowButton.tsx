import { useState } from "react";
import { type Answered, askServer } from "../asking/ask-server.ts";
import { Refusals } from "../asking/Refusals.tsx";
import { useAnswer } from "../asking/use-answer.ts";
import { Button } from "../ui/Button.tsx";
import { TextLink } from "../ui/TextLink.tsx";
import styles from "./FollowButton.module.css";

interface Following {
  readonly isFollowed: boolean;
}

/** Follows a term, a region, a source or an examination, so that the digest tells what changes about it, or leaves it. */
export function FollowButton({ about, name }: { about: string; name: string }) {
  const { answer } = useAnswer<Following>("/chronicle/following", { about });
  const [changed, setChanged] = useState<Answered<Following>>();
  const known = changed && "done" in changed ? changed : answer;
  // Where it cannot be told whether it is followed, the page goes without.
  if (known === undefined || "refused" in known) return null;
  const { isFollowed } = known.done;
  return (
    <div className={`screen-only ${styles["follow"]}`}>
      <Button
        look="quiet"
        aria-label={`${isFollowed ? "Do not follow" : "Follow"} ${name}`}
        onPress={async () =>
          setChanged(await askServer(`/chronicle/${isFollowed ? "unfollow" : "follow"}`, { about }))
        }
      >
        {isFollowed ? "Do not follow any more" : "Follow"}
      </Button>{" "}
      <span role="status">
        {isFollowed ? (
          <>
            Followed: <TextLink to="/house/digest">the digest</TextLink> tells what changes.
          </>
        ) : null}
      </span>
      <Refusals answer={changed} />
    </div>
  );
}
