import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NothingToFault() {
  return (
    <NotInBook
      title="That is not in the book, so nothing can be written of it."
      toDo="A fault is written down from the page of a job, a piece or a container."
    />
  );
}
