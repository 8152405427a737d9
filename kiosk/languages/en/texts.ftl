### Texts drafted by machine, and who has checked them.

texts-drafted = { $language }: { $n } texts drafted by machine, not signed: { $left }
texts-signed-by = signed by { $who }, { $at }: { $n } texts
texts-left = not signed as it stands now: { $where }
texts-nothing-left = There is nothing left to sign.
texts-signed = { $who } has signed { $n } texts. Not signed: { $left }. When nothing is left, “{ $mark }” goes from the screens with the next start.
texts-withdrawn = Signatures taken back: { $n }.
