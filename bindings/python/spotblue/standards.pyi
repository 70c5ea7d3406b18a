from spotblue._numbers.standards import *
