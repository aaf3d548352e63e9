/** That a piece was measured after marks were put on it: they may lie on other wood than the drawing shows. */
export const sayMarksOfBefore = (count: number) =>
  count === 1
    ? 'One mark was made before it was measured as it is now.'
    : `${count} marks were made before it was measured as it is now.`;
