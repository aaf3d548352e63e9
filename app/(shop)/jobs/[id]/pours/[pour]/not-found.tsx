import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NoSuchPour() {
  return (
    <NotInBook
      title="This pour is not in the book."
      toDo="It may have been taken off, or planned anew. Look at its job."
    />
  );
}
