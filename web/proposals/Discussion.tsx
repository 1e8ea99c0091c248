import { useState } from "react";
import { MOST_COMMENTS } from "#server/domain/proposals/comment.ts";
import { Button } from "../shared/ui/Button.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import type { CommentFieldsFragment } from "./Discussion.graphql.ts";
import styles from "./proposals.module.css";
import { SayComment } from "./SayComment.tsx";
import type { Talk } from "./use-discussion.ts";

interface Props {
  /** Id of the proposal or dispute. */
  on: string;
  isSeenByAll: boolean;
  talk: Talk;
  /** Ids of what others said since the page was opened. */
  fresh: ReadonlySet<string>;
}

/** What was said, in threads: an answer stands below what it answers. */
export function Discussion({ talk, ...props }: Props) {
  const list = talk.comments;
  const comments = list?.edges.map(({ node }) => node) ?? [];
  const known = new Set(comments.map(({ id }) => id));
  const begins = comments.filter(({ answers }) => answers === null || !known.has(answers));
  const again = () => void talk.readAgain();
  const isFull = (list?.totalCount ?? 0) >= MOST_COMMENTS;
  return (
    <section className={styles["talk"]} aria-labelledby="talk">
      <h2 id="talk">
        Discussion <span>· {list?.totalCount ?? 0}</span>
      </h2>
      {list === undefined ? <Waiting what="what was said" /> : null}
      <ol className={styles["thread"]}>
        {begins.map((comment) => (
          <Thread key={comment.id} {...{ ...props, comment, comments, again, isFull }} />
        ))}
      </ol>
      {list ? <ShowMore list={list} onMore={talk.readOn} label="Show what was said later" /> : null}
      {isFull ? (
        <p className={styles["beside"]}>
          {MOST_COMMENTS} things were said here, and there can be no more. Bring it to an end, or make another
          that says what is still open.
        </p>
      ) : (
        <SayComment on={props.on} isSeenByAll={props.isSeenByAll} onSaid={again} />
      )}
    </section>
  );
}

interface ThreadProps extends Omit<Props, "talk"> {
  comment: CommentFieldsFragment;
  comments: readonly CommentFieldsFragment[];
  again: () => void;
  isFull: boolean;
}

function Thread({ comment, comments, on, isSeenByAll, fresh, again, isFull }: ThreadProps) {
  const [isAnswering, setAnswering] = useState(false);
  const answers = comments.filter((one) => one.answers === comment.id);
  return (
    <li>
      <p className={styles["beside"]}>
        <strong>{sayPerson(comment.by)}</strong> · <time dateTime={comment.at}>{sayDay(comment.at)}</time>
        {fresh.has(comment.id) ? <strong> · new</strong> : null}
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
      ) : isFull ? null : (
        <Button look="quiet" onPress={() => setAnswering(true)}>
          Answer<span className="visually-hidden"> {sayPerson(comment.by)}</span>
        </Button>
      )}
      {answers.length > 0 ? (
        <ol className={styles["thread"]}>
          {answers.map((answer) => (
            <Thread
              key={answer.id}
              {...{ on, isSeenByAll, fresh, comments, again, isFull }}
              comment={answer}
            />
          ))}
        </ol>
      ) : null}
    </li>
  );
}
