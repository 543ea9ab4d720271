import { useTell } from '../language/use-tell.ts';

export const NoSuchSet = ({ id }: { readonly id: string }) => {
  const tell = useTell();
  return (
    <>
      <h1>{tell('Set {id}', { id })}</h1>
      <p>{tell('The house of this call has no such set.')}</p>
    </>
  );
};
