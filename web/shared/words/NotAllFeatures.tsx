/** Says that kinds of part have more features than were looked at. */
export const NotAllFeatures = () => (
  <p>
    More features are looked for on these parts than are looked at here, since there are so many. The search
    of the evidence finds each of them.
  </p>
);
