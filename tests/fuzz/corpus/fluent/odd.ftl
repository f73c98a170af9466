a = { $n ->
    [0] none
    [one] one { $n }
   *[other] { $n } many
}
b = { a } { "\u0041" }
    .attr = x
-t = term
c = { -t(case: "x") }
d = { d }
