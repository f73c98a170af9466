phone-contents = Nesta página
