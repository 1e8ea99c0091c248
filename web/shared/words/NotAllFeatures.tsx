/** Says that a kind of part has more features than were looked at. */
export const NotAllFeatures = ({ unread }: { readonly unread: number }) =>
  unread === 0 ? null : (
    <p>
      {unread} more {unread === 1 ? "feature is" : "features are"} looked for on these parts and{" "}
      {unread === 1 ? "was" : "were"} left out here, since there are so many. Search finds each of them.
    </p>
  );
