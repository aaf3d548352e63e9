import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NoSuchProduct() {
  return (
    <NotInBook
      title="This product is not in the book."
      toDo="Search for it by name or maker, or teach it to the book as it arrives."
    />
  );
}
