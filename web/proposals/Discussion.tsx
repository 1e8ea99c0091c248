import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { type CommentFieldsFragment, DiscussionDocument } from "./Discussion.graphql.ts";
import styles from "./proposals.module.css";
import { SayComment } from "./SayComment.tsx";

const AT_ONCE = 50;

interface Props {
  /** Id of the proposal or dispute. */
  on: string;
  isSeenByAll: boolean;
}

/** What was said, in threads: an answer stands below what it answers. */
export function Discussion({ on, isSeenByAll }: Props) {
  const { data, fetchMore, refetch } = useQuery(DiscussionDocument, {
    variables: { on, first: AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const comments = data?.comments.edges.map(({ node }) => node) ?? [];
  const known = new Set(comments.map(({ id }) => id));
  const begins = comments.filter(({ answers }) => answers === null || !known.has(answers));
  const again = () => void refetch();
  return (
    <section className={styles["talk"]} aria-labelledby="talk">
      <h2 id="talk">
        Discussion <span>· {data?.comments.totalCount ?? 0}</span>
      </h2>
      {data === undefined ? <Waiting what="what was said" /> : null}
      <ol className={styles["thread"]}>
        {begins.map((comment) => (
          <Thread key={comment.id} {...{ on, isSeenByAll, comment, comments, again }} />
        ))}
      </ol>
      {data ? (
        <ShowMore
          list={data.comments}
          onMore={(after) => fetchMore({ variables: { after } })}
          label="Show what was said later"
        />
      ) : null}
      <SayComment on={on} isSeenByAll={isSeenByAll} onSaid={again} />
    </section>
  );
}

interface ThreadProps extends Props {
  comment: CommentFieldsFragment;
  comments: readonly CommentFieldsFragment[];
  again: () => void;
}

function Thread({ comment, comments, on, isSeenByAll, again }: ThreadProps) {
  const [isAnswering, setAnswering] = useState(false);
  const answers = comments.filter((one) => one.answers === comment.id);
  return (
    <li>
      <p className={styles["beside"]}>
        <strong>{sayPerson(comment.by)}</strong> · <time dateTime={comment.at}>{sayDay(comment.at)}</time>
        {comment.mentions.length > 0 ? ` · to ${comment.mentions.map(sayPerson).join(", ")}` : ""}
      </p>
      <p className={styles["said"]}>{comment.text}</p>
      {isAnswering ? (
        <SayComment
          {...{ on, isSeenByAll, answers: comment.id }}
          onSaid={() => {
            setAnswering(false);
            again();
          }}
        />
      ) : (
        <Button look="quiet" onPress={() => setAnswering(true)}>
          Answer<span className="visually-hidden"> {sayPerson(comment.by)}</span>
        </Button>
      )}
      {answers.length > 0 ? (
        <ol className={styles["thread"]}>
          {answers.map((answer) => (
            <Thread key={answer.id} {...{ on, isSeenByAll, comments, again }} comment={answer} />
          ))}
        </ol>
      ) : null}
    </li>
  );
}
