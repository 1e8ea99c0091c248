import { SayComment } from "./SayComment.tsx";

interface Props {
  /** Id of the proposal or dispute. */
  on: string;
  text: string;
  onSaid: () => void;
  /** Told once there is nothing left. */
  onGone: () => void;
}

/** What somebody was writing while another decided; nothing where they wrote nothing. */
export const LeftUnsaid = ({ on, text, onSaid, onGone }: Props) =>
  text.trim() === "" ? null : (
    <section aria-label="What you were writing">
      <p>It was decided while you were writing. What you wrote can still be said in the discussion.</p>
      <SayComment
        on={on}
        isSeenByAll
        begun={text}
        onSaid={() => {
          onGone();
          onSaid();
        }}
      />
    </section>
  );
