/** What of a link could not be read. */
export const Unread = ({ says }: { says: readonly string[] }) =>
  says.length > 0 ? (
    <div class="aside note" role="status">
      <b>Note</b> {says.join(" ")}
    </div>
  ) : null;
