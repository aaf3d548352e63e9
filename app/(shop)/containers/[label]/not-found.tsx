import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NoSuchContainer() {
  return (
    <NotInBook
      title="This container is not in the book."
      toDo="Check the label: C, then six characters. If it was printed but never booked in, book it in now; otherwise search for it by name."
    />
  );
}
