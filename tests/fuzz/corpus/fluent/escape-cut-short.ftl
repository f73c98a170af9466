a = { $n ->
    [0] none
  ⹍e] one { $n }
   *[other] { $n  $n } many
}
b = { a } { "\u004ᅭ" }
    .attr = x
-t = term
c